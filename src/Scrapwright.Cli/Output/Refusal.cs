using Scrapwright.Files;

namespace Scrapwright.Cli.Output;

/// <summary>Says what was wrong with the input.</summary>
internal static class Refusal
{
    /// <summary>One line for each problem, each with its place, what was found and what was expected.</summary>
    internal static int Write(Terminal terminal, IReadOnlyCollection<FileProblem> problems, int more = 0)
    {
        foreach (var problem in problems) terminal.Error.WriteLine(problem.Message);
        if (more > 0) terminal.Error.WriteLine($"And {more} more.");
        return ExitCodes.Of(problems);
    }

    /// <summary>What was read and could not be.</summary>
    /// <exception cref="InvalidOperationException">It could.</exception>
    internal static int Write<T>(Terminal terminal, FileOutcome<T> outcome) => outcome is FileOutcome<T>.Refused refused
        ? Write(terminal, refused.Problems, refused.More)
        : throw new InvalidOperationException("An outcome of another kind.");

    /// <summary>A file or folder that cannot be used.</summary>
    internal static int Write(Terminal terminal, string place, string found, string expected) =>
        Write(terminal, [new FileProblem(place, 0, 0, found.TrimEnd('.').ReplaceLineEndings(" "), expected)]);
}
