using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Files;

/// <summary>Reads and writes <c>given.csv</c>: one row for each gift that somebody was given. Occasions and designs may be such as are no longer there.</summary>
public static class GivenFile
{
    /// <summary>The file's name in a workshop folder.</summary>
    public const string Name = "given.csv";

    /// <summary>The columns that must be there first, then the others.</summary>
    private static readonly ImmutableArray<string> Known = ["date", "recipient", "design", "occasion", "circle", "options", "note"];

    /// <summary>The columns, in the order written.</summary>
    public static ImmutableArray<string> Columns { get; } = ["date", "occasion", "recipient", "circle", "design", "options", "note"];

    /// <summary>Reads the file's bytes, UTF-8.</summary>
    /// <param name="bytes">The whole file.</param>
    public static FileOutcome<ImmutableArray<GivenGift>> Parse(ReadOnlySpan<byte> bytes)
    {
        var problems = new ProblemList(Name);
        return Parse(FileText.Decode(bytes, problems), problems);
    }

    /// <summary>Reads the file's text.</summary>
    /// <param name="text">The whole file.</param>
    public static FileOutcome<ImmutableArray<GivenGift>> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var problems = new ProblemList(Name);
        return Parse(FileText.Check(text, problems), problems);
    }

    /// <summary>The file's text, which is read back to the same gifts.</summary>
    /// <param name="given">What was given.</param>
    public static string Write(IEnumerable<GivenGift> given)
    {
        ArgumentNullException.ThrowIfNull(given);
        return TableWriter.Write(Columns, given.Select(gift => new[]
        {
            gift.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), gift.Occasion, gift.Recipient, gift.Circle, gift.Design, GiftOptionText.Write(gift.Options), gift.Note,
        }));
    }

    private static FileOutcome<ImmutableArray<GivenGift>> Parse(string? text, ProblemList problems)
    {
        var given = ImmutableArray.CreateBuilder<GivenGift>();
        if (text is not null && TableReader.Read(text, Known, required: 3, problems) is { } table)
        {
            foreach (var row in table.Rows)
            {
                var date = row.Date("date", problems);
                var gift = new GivenGift
                {
                    Date = date ?? new DateOnly(2000, 1, 1),
                    Occasion = row["occasion"],
                    Recipient = row["recipient"],
                    Circle = row["circle"],
                    Design = row["design"],
                    Options = OptionCells.Read(row, problems),
                    Note = row["note"],
                };
                foreach (var problem in GivenRules.Check(gift)) row.Refuse(OptionCells.ColumnOf(problem.Path), problem.Found, problem.Expected, problems);
                if (date is not null) given.Add(gift);
            }
        }

        return problems.Outcome(given.ToImmutable);
    }
}
