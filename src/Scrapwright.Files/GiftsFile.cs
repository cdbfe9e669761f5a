using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Files;

/// <summary>Reads and writes <c>gifts.csv</c>: one row for each gift. Whether a design takes the options is for the design to say.</summary>
public static class GiftsFile
{
    /// <summary>The file's name in a workshop folder.</summary>
    public const string Name = "gifts.csv";

    private const int LongestLabel = 24;

    /// <summary>The columns that must be there first, then the others.</summary>
    private static readonly ImmutableArray<string> Known = ["gift", "design", "recipient", "circle", "options", "due", "priority"];

    /// <summary>The columns, in the order written.</summary>
    public static ImmutableArray<string> Columns { get; } = ["gift", "recipient", "circle", "design", "options", "due", "priority"];

    /// <summary>Reads the file's bytes, UTF-8.</summary>
    /// <param name="bytes">The whole file.</param>
    public static FileOutcome<ImmutableArray<Gift>> Parse(ReadOnlySpan<byte> bytes)
    {
        var problems = new ProblemList(Name);
        return Parse(FileText.Decode(bytes, problems), problems);
    }

    /// <summary>Reads the file's text.</summary>
    /// <param name="text">The whole file.</param>
    public static FileOutcome<ImmutableArray<Gift>> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var problems = new ProblemList(Name);
        return Parse(FileText.Check(text, problems), problems);
    }

    /// <summary>The file's text, which is read back to the same gifts.</summary>
    /// <param name="gifts">The gifts.</param>
    public static string Write(IEnumerable<Gift> gifts)
    {
        ArgumentNullException.ThrowIfNull(gifts);
        return TableWriter.Write(Columns, gifts.Select(gift => new[]
        {
            gift.Label, gift.Recipient, gift.Circle, gift.Design,
            string.Join("; ", gift.Options.Select(option => $"{option.Key}={option.Value}")),
            gift.Due?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "",
            gift.Priority.ToString(CultureInfo.InvariantCulture),
        }));
    }

    private static FileOutcome<ImmutableArray<Gift>> Parse(string? text, ProblemList problems)
    {
        var gifts = ImmutableArray.CreateBuilder<Gift>();
        if (text is not null && TableReader.Read(text, Known, required: 2, problems) is { } table)
        {
            var lines = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
            foreach (var row in table.Rows)
            {
                gifts.Add(ReadRow(row, problems));
                var label = row["gift"];
                if (label.Length > 0 && !lines.TryAdd(label, row.Line)) Add(row, "gift", label, FileMessages.UniqueLabel(lines[label]), problems);
            }
        }

        return problems.Outcome(gifts.ToImmutable);
    }

    private static Gift ReadRow(TableRow row, ProblemList problems)
    {
        if (row["gift"].Length is 0 or > LongestLabel) Add(row, "gift", row["gift"], FileMessages.AGiftName, problems);
        if (row["design"].Length == 0) Add(row, "design", "", FileMessages.AValue, problems);
        DateOnly? due = null;
        if (row["due"].Length > 0)
        {
            if (DateOnly.TryParseExact(row["due"], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)) due = date;
            else Add(row, "due", row["due"], FileMessages.ADate, problems);
        }

        var priority = 2;
        if (row["priority"].Length > 0 && !(int.TryParse(row["priority"], NumberStyles.None, CultureInfo.InvariantCulture, out priority) && priority is >= 1 and <= 9))
            Add(row, "priority", row["priority"], FileMessages.APriority, problems);
        return new Gift
        {
            Label = row["gift"],
            Recipient = row["recipient"],
            Circle = row["circle"],
            Design = row["design"],
            Options = ReadOptions(row, problems),
            Due = due,
            Priority = priority,
        };
    }

    private static ImmutableSortedDictionary<string, string> ReadOptions(TableRow row, ProblemList problems)
    {
        var options = ImmutableSortedDictionary.CreateBuilder<string, string>();
        foreach (var part in row["options"].Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var equals = part.IndexOf('=', StringComparison.Ordinal);
            var key = equals > 0 ? part[..equals].Trim().ToLowerInvariant() : "";
            if (key.Length == 0) Add(row, "options", part, FileMessages.AnOption, problems);
            else if (!options.TryAdd(key, part[(equals + 1)..].Trim())) Add(row, "options", part, "each option only once", problems);
        }

        return options.ToImmutable();
    }

    private static void Add(TableRow row, string column, string found, string expected, ProblemList problems)
    {
        var (line, start) = row.PlaceOf(column);
        problems.Add(line, start, found, expected);
    }
}
