using System.Collections.Immutable;

namespace Scrapwright.Client.Api;

/// <summary>Why the server refused, in the form of RFC 9457 (application/problem+json).</summary>
public sealed record ApiProblem
{
    /// <summary>Kind of problem, always <c>about:blank</c>: the title says it.</summary>
    public string Type { get; init; } = "about:blank";

    /// <summary>What is wrong, in one line for the maker.</summary>
    public required string Title { get; init; }

    /// <summary>The response's status code.</summary>
    public required int Status { get; init; }

    /// <summary>More about it; may be empty.</summary>
    public string Detail { get; init; } = "";

    /// <summary>Each wrong field; may be empty.</summary>
    public ImmutableArray<FieldProblem> Problems { get; init; } = [];

    /// <summary>A problem in one line, for an undo that failed; empty for none.</summary>
    /// <param name="problem">The problem, or null.</param>
    public static string Line(ApiProblem? problem) => problem is null ? "" : $"{problem.Title} {problem.Detail}";
}
