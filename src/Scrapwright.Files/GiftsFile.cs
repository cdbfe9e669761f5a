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
    private static readonly ImmutableArray<string> Known = ["gift", "design", "recipient", "circle", "options", "due", "priority", "climate", "finish"];

    /// <summary>The columns, in the order written.</summary>
    public static ImmutableArray<string> Columns { get; } = ["gift", "recipient", "circle", "design", "options", "due", "priority", "climate", "finish"];

    /// <summary>Reads the file's bytes, UTF-8.</summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="shop">The shop, which names climates of its own.</param>
    public static FileOutcome<ImmutableArray<Gift>> Parse(ReadOnlySpan<byte> bytes, Shop shop)
    {
        var problems = new ProblemList(Name);
        return Parse(FileText.Decode(bytes, problems), shop, problems);
    }

    /// <summary>Reads the file's text.</summary>
    /// <param name="text">The whole file.</param>
    /// <param name="shop">The shop, which names climates of its own.</param>
    public static FileOutcome<ImmutableArray<Gift>> Parse(string text, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(text);
        var problems = new ProblemList(Name);
        return Parse(FileText.Check(text, problems), shop, problems);
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
            gift.Priority.ToString(CultureInfo.InvariantCulture), gift.Climate, gift.Finish,
        }));
    }

    private static FileOutcome<ImmutableArray<Gift>> Parse(string? text, Shop shop, ProblemList problems)
    {
        var gifts = ImmutableArray.CreateBuilder<Gift>();
        if (text is not null && TableReader.Read(text, Known, required: 2, problems) is { } table)
        {
            var lines = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
            foreach (var row in table.Rows)
            {
                gifts.Add(ReadRow(row, shop, problems));
                var label = row["gift"];
                if (label.Length > 0 && !lines.TryAdd(label, row.Line)) Add(row, "gift", label, FileMessages.UniqueLabel(lines[label]), problems);
            }
        }

        return problems.Outcome(gifts.ToImmutable);
    }

    private static Gift ReadRow(TableRow row, Shop shop, ProblemList problems)
    {
        if (row["design"].Length == 0) Add(row, "design", "", FileMessages.AValue, problems);
        DateOnly? due = null;
        if (row["due"].Length > 0)
        {
            if (DateOnly.TryParseExact(row["due"], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)) due = date;
            else Add(row, "due", row["due"], FileMessages.ADate, problems);
        }

        var hasPriority = int.TryParse(row["priority"], NumberStyles.None, CultureInfo.InvariantCulture, out var priority);
        if (!hasPriority && row["priority"].Length > 0) Add(row, "priority", row["priority"], FileMessages.APriority, problems);
        var gift = new Gift
        {
            Label = row["gift"],
            Recipient = row["recipient"],
            Circle = row["circle"],
            Design = row["design"],
            Options = ReadOptions(row, problems),
            Due = due,
            Priority = hasPriority ? priority : 2,
            Climate = row["climate"],
            Finish = row["finish"],
        };
        foreach (var problem in GiftRules.Check(gift, shop)) Add(row, ColumnOf(problem.Path), problem.Found, problem.Expected, problems);
        return gift;
    }

    private static string ColumnOf(string path) => path switch
    {
        "label" => "gift",
        _ when path.StartsWith("options", StringComparison.Ordinal) => "options",
        _ => path,
    };

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
