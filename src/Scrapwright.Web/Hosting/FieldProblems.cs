using System.Collections.Immutable;
using Scrapwright.Client.Api;
using Scrapwright.Files;

namespace Scrapwright.Web.Hosting;

/// <summary>Problems of values as the API tells them.</summary>
internal static class FieldProblems
{
    /// <summary>The same problems, each at its field.</summary>
    /// <param name="problems">The problems.</param>
    /// <param name="prefix">What stands before every path: the member of the body that the value is in.</param>
    internal static ImmutableArray<FieldProblem> AsFields(this IEnumerable<ValueProblem> problems, string prefix = "") =>
        [.. problems.Select(p => new FieldProblem(prefix + p.Path, p.Found, p.Expected))];
}
