using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Files;

/// <summary>Reads and writes <c>occasions.csv</c>: one row for each occasion.</summary>
public static class OccasionsFile
{
    /// <summary>The file's name in a workshop folder.</summary>
    public const string Name = "occasions.csv";

    /// <summary>The columns, in the order written; the first two must be there.</summary>
    public static ImmutableArray<string> Columns { get; } = ["occasion", "date", "repeats", "note"];

    /// <summary>Reads the file's bytes, UTF-8.</summary>
    /// <param name="bytes">The whole file.</param>
    public static FileOutcome<ImmutableArray<Occasion>> Parse(ReadOnlySpan<byte> bytes)
    {
        var problems = new ProblemList(Name);
        return Parse(FileText.Decode(bytes, problems), problems);
    }

    /// <summary>Reads the file's text.</summary>
    /// <param name="text">The whole file.</param>
    public static FileOutcome<ImmutableArray<Occasion>> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var problems = new ProblemList(Name);
        return Parse(FileText.Check(text, problems), problems);
    }

    /// <summary>The file's text, which is read back to the same occasions.</summary>
    /// <param name="occasions">The occasions.</param>
    public static string Write(IEnumerable<Occasion> occasions)
    {
        ArgumentNullException.ThrowIfNull(occasions);
        return TableWriter.Write(Columns, occasions.Select(occasion => new[]
        {
            occasion.Name, occasion.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), RepetitionWords.Write(occasion.Repeats), occasion.Note,
        }));
    }

    private static FileOutcome<ImmutableArray<Occasion>> Parse(string? text, ProblemList problems)
    {
        var occasions = ImmutableArray.CreateBuilder<Occasion>();
        if (text is not null && TableReader.Read(text, Columns, required: 2, problems) is { } table)
        {
            var lines = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
            foreach (var row in table.Rows)
            {
                if (ReadRow(row, problems) is { } occasion) occasions.Add(occasion);
                var name = row["occasion"];
                if (name.Length > 0 && !lines.TryAdd(name, row.Line)) row.Refuse("occasion", name, FileMessages.UniqueName(lines[name]), problems);
            }
        }

        return problems.Outcome(occasions.ToImmutable);
    }

    private static Occasion? ReadRow(TableRow row, ProblemList problems)
    {
        var date = row.Date("date", problems);
        var repeats = RepetitionWords.Find(row["repeats"], date ?? new DateOnly(2000, 1, 1));
        if (repeats is null) row.Refuse("repeats", row["repeats"], FileMessages.ARepetition(RepetitionWords.Nearest(row["repeats"])), problems);
        var occasion = new Occasion { Name = row["occasion"], Date = date ?? new DateOnly(2000, 1, 1), Repeats = repeats ?? new Repetition.Never(), Note = row["note"] };
        foreach (var problem in OccasionRules.Check(occasion)) row.Refuse(problem.Path == "name" ? "occasion" : problem.Path, problem.Found, problem.Expected, problems);
        return date is null || repeats is null ? null : occasion;
    }
}
