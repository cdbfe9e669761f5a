using System.Collections.Immutable;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files;

/// <summary>What a reading of time must keep to, in a file as on a screen.</summary>
public static class TimeRules
{
    private const int MostMinutes = 10_000;
    private const int LongestNote = 200;

    private static readonly DateOnly FirstDay = new(1970, 1, 1);
    private static readonly DateOnly LastDay = new(9000, 1, 1);

    /// <summary>Every value that breaks a rule, with its path; empty when the reading will do.</summary>
    /// <param name="reading">The reading.</param>
    public static ImmutableArray<ValueProblem> Check(TimeReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var checks = new ValueChecks();
        checks.Require(reading.Date >= FirstDay && reading.Date <= LastDay, "date", $"{reading.Date:yyyy-MM-dd}", FileMessages.ADate);
        checks.Require(Enum.IsDefined(reading.Operation), "operation", $"{reading.Operation}", "an operation");
        checks.Text("setting", reading.Setting, 60);
        if (reading.Setting is { Length: > 0 } setting) checks.Require(IsSetting(reading.Operation, setting), "setting", setting, ExpectedSetting(reading.Operation, setting));
        checks.Within("plannedMinutes", reading.PlannedMinutes, 1, MostMinutes);
        checks.Within("tookMinutes", reading.TookMinutes, 1, MostMinutes);
        checks.Text("note", reading.Note, LongestNote);
        return checks.Problems;
    }

    private static bool IsSetting(Operation operation, string setting) =>
        setting == TimeReading.ByHand || (operation == Operation.Finish && FinishTable.Find(setting)?.Key == setting);

    private static string ExpectedSetting(Operation operation, string setting) => operation == Operation.Finish
        ? FileMessages.AKeyOf("the key of a finish", [.. FinishTable.All.Select(f => f.Key)], setting)
        : $"{TimeReading.ByHand}, or nothing";
}
