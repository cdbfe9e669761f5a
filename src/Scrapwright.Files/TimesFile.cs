using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files;

/// <summary>Reads and writes <c>times.csv</c>: one row for each work that was timed.</summary>
public static class TimesFile
{
    /// <summary>The file's name in a workshop folder.</summary>
    public const string Name = "times.csv";

    /// <summary>The columns that must be there first, then the others.</summary>
    private static readonly ImmutableArray<string> Known = ["date", "operation", "planned", "took", "setting", "note"];

    /// <summary>The columns, in the order written.</summary>
    public static ImmutableArray<string> Columns { get; } = ["date", "operation", "setting", "planned", "took", "note"];

    /// <summary>Reads the file's bytes, UTF-8.</summary>
    /// <param name="bytes">The whole file.</param>
    public static FileOutcome<ImmutableArray<TimeReading>> Parse(ReadOnlySpan<byte> bytes)
    {
        var problems = new ProblemList(Name);
        return Parse(FileText.Decode(bytes, problems), problems);
    }

    /// <summary>Reads the file's text.</summary>
    /// <param name="text">The whole file.</param>
    public static FileOutcome<ImmutableArray<TimeReading>> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var problems = new ProblemList(Name);
        return Parse(FileText.Check(text, problems), problems);
    }

    /// <summary>The file's text, which is read back to the same readings.</summary>
    /// <param name="readings">The readings.</param>
    public static string Write(IEnumerable<TimeReading> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        return TableWriter.Write(Columns, readings.Select(reading => new[]
        {
            reading.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), OperationNames.Of(reading.Operation), reading.Setting,
            reading.PlannedMinutes.ToString(CultureInfo.InvariantCulture), reading.TookMinutes.ToString(CultureInfo.InvariantCulture), reading.Note,
        }));
    }

    private static FileOutcome<ImmutableArray<TimeReading>> Parse(string? text, ProblemList problems)
    {
        var readings = ImmutableArray.CreateBuilder<TimeReading>();
        if (text is not null && TableReader.Read(text, Known, required: 4, problems) is { } table)
        {
            foreach (var row in table.Rows)
            {
                if (ReadRow(row, problems) is { } reading) readings.Add(reading);
            }
        }

        return problems.Outcome(readings.ToImmutable);
    }

    private static TimeReading? ReadRow(TableRow row, ProblemList problems)
    {
        var before = problems.Count;
        var date = row.Date("date", problems);
        var operation = OperationNames.Find(row["operation"]);
        if (operation is null) row.Refuse("operation", row["operation"], FileMessages.AKeyOf("an operation", OperationNames.All, row["operation"]), problems);
        var (planned, took) = (Minutes(row, "planned", problems), Minutes(row, "took", problems));
        if (problems.Count > before) return null;
        var reading = new TimeReading(date!.Value, operation!.Value, planned, took) { Setting = row["setting"].ToLowerInvariant(), Note = row["note"] };
        foreach (var problem in TimeRules.Check(reading)) row.Refuse(ColumnOf(problem.Path), problem.Found, problem.Expected, problems);
        return reading;
    }

    private static int Minutes(TableRow row, string column, ProblemList problems)
    {
        if (int.TryParse(row[column], NumberStyles.None, CultureInfo.InvariantCulture, out var minutes)) return minutes;
        row.Refuse(column, row[column], FileMessages.WholeMinutes, problems);
        return 0;
    }

    private static string ColumnOf(string path) => path switch
    {
        "plannedMinutes" => "planned",
        "tookMinutes" => "took",
        _ => path,
    };
}
