using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files;

/// <summary>Reads and writes <c>gifts.csv</c>: one row for each gift. Whether a design takes the options is for the design to say.</summary>
public static class GiftsFile
{
    /// <summary>The file's name in a workshop folder.</summary>
    public const string Name = "gifts.csv";

    /// <summary>The columns that must be there first, then the others.</summary>
    private static readonly ImmutableArray<string> Known = ["gift", "design", "recipient", "circle", "options", "due", "priority", "climate", "finish", "occasion"];

    /// <summary>The columns, in the order written.</summary>
    public static ImmutableArray<string> Columns { get; } = ["gift", "recipient", "circle", "design", "options", "occasion", "due", "priority", "climate", "finish"];

    /// <summary>Reads the file's bytes, UTF-8.</summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="shop">The shop, which names climates of its own.</param>
    /// <param name="occasions">The occasions there are; null when that is not known, and any name will do.</param>
    public static FileOutcome<ImmutableArray<Gift>> Parse(ReadOnlySpan<byte> bytes, Shop shop, ImmutableArray<Occasion>? occasions = null)
    {
        var problems = new ProblemList(Name);
        return Parse(FileText.Decode(bytes, problems), shop, occasions, problems);
    }

    /// <summary>Reads the file's text.</summary>
    /// <param name="text">The whole file.</param>
    /// <param name="shop">The shop, which names climates of its own.</param>
    /// <param name="occasions">The occasions there are; null when that is not known, and any name will do.</param>
    public static FileOutcome<ImmutableArray<Gift>> Parse(string text, Shop shop, ImmutableArray<Occasion>? occasions = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        var problems = new ProblemList(Name);
        return Parse(FileText.Check(text, problems), shop, occasions, problems);
    }

    /// <summary>The file's text, which is read back to the same gifts.</summary>
    /// <param name="gifts">The gifts.</param>
    public static string Write(IEnumerable<Gift> gifts)
    {
        ArgumentNullException.ThrowIfNull(gifts);
        return TableWriter.Write(Columns, gifts.Select(gift => new[]
        {
            gift.Label, gift.Recipient, gift.Circle, gift.Design,
            GiftOptionText.Write(gift.Options), gift.Occasion,
            gift.Due?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "",
            gift.Priority.ToString(CultureInfo.InvariantCulture), gift.Climate, gift.Finish,
        }));
    }

    private static FileOutcome<ImmutableArray<Gift>> Parse(string? text, Shop shop, ImmutableArray<Occasion>? occasions, ProblemList problems)
    {
        var gifts = ImmutableArray.CreateBuilder<Gift>();
        if (text is not null && TableReader.Read(text, Known, required: 2, problems) is { } table)
        {
            var lines = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
            foreach (var row in table.Rows)
            {
                gifts.Add(ReadRow(row, shop, occasions, problems));
                var label = row["gift"];
                if (label.Length > 0 && !lines.TryAdd(label, row.Line)) row.Refuse("gift", label, FileMessages.UniqueLabel(lines[label]), problems);
            }
        }

        return problems.Outcome(gifts.ToImmutable);
    }

    private static Gift ReadRow(TableRow row, Shop shop, ImmutableArray<Occasion>? occasions, ProblemList problems)
    {
        if (row["design"].Length == 0) row.Refuse("design", "", FileMessages.AValue, problems);
        var due = row["due"].Length > 0 ? row.Date("due", problems) : null;

        // Where there are no occasions at all, the name of one does no harm beside a date.
        if (row["occasion"].Length > 0 && occasions is { } known && !(known.IsEmpty && due is not null) && !known.Any(occasion => GiftYears.IsSame(occasion.Name, row["occasion"])))
            row.Refuse("occasion", row["occasion"], FileMessages.AnOccasion(row["occasion"], [.. known.Select(occasion => occasion.Name)]), problems);

        var hasPriority = int.TryParse(row["priority"], NumberStyles.None, CultureInfo.InvariantCulture, out var priority);
        if (!hasPriority && row["priority"].Length > 0) row.Refuse("priority", row["priority"], FileMessages.APriority, problems);
        var gift = new Gift
        {
            Label = row["gift"],
            Recipient = row["recipient"],
            Circle = row["circle"],
            Design = row["design"],
            Options = OptionCells.Read(row, problems),
            Occasion = row["occasion"],
            Due = due,
            Priority = hasPriority ? priority : 2,
            Climate = row["climate"],
            Finish = row["finish"],
        };
        foreach (var problem in GiftRules.Check(gift, shop)) row.Refuse(ColumnOf(problem.Path), problem.Found, problem.Expected, problems);
        return gift;
    }

    private static string ColumnOf(string path) => path == "label" ? "gift" : OptionCells.ColumnOf(path);
}
