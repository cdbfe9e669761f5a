using System.Collections.Immutable;

namespace Scrapwright.Files;

/// <summary>Collects what is wrong and what is doubtful in one file; keeps the first 50 problems and counts the rest.</summary>
internal sealed class ProblemList(string file)
{
    private const int MostKept = 50;
    private const int LongestFound = 60;
    private readonly List<FileProblem> problems = [];
    private readonly List<FileDoubt> doubts = [];

    internal int Count => problems.Count + More;

    internal int More { get; private set; }

    internal void Add(int line, int column, string found, string expected)
    {
        if (problems.Count == MostKept)
        {
            More++;
            return;
        }

        var shown = found.Length <= LongestFound ? found : found[..LongestFound] + "…";
        problems.Add(new(file, line, column, string.Concat(shown.Select(c => char.IsControl(c) ? ' ' : c)), expected));
    }

    internal void Ask(int line, string question) => doubts.Add(new(file, line, question));

    internal FileOutcome<T> Outcome<T>(Func<T> content) => problems.Count == 0
        ? new FileOutcome<T>.Read(content(), [.. doubts])
        : new FileOutcome<T>.Refused([.. problems.OrderBy(problem => problem.Line).ThenBy(problem => problem.Column)], More);
}
