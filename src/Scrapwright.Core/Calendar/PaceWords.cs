using System.Globalization;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar;

/// <summary>The maker's paces in plain words.</summary>
public static class PaceWords
{
    /// <summary>The kind of work: <c>Joint edges</c>, <c>Joint one face, by hand</c>, <c>Apply finish, drying oil</c>.</summary>
    /// <param name="operation">The operation.</param>
    /// <param name="setting">As in <see cref="TimeReading.Setting"/>.</param>
    public static string Of(Operation operation, string setting)
    {
        ArgumentNullException.ThrowIfNull(setting);
        return setting switch
        {
            "" => ShopWords.Of(operation),
            TimeReading.ByHand => $"{ShopWords.Of(operation)}, by hand",
            _ => $"{ShopWords.Of(operation)}, {FinishTable.Find(setting)?.Name ?? setting}",
        };
    }

    /// <summary>How long it takes: <c>takes you 1.3 times as long, from 6 readings</c>.</summary>
    /// <param name="pace">The pace.</param>
    public static string Of(OperationPace pace)
    {
        ArgumentNullException.ThrowIfNull(pace);
        return $"takes you {Times(pace)}, from {pace.Readings} reading{(pace.Readings == 1 ? "" : "s")}";
    }

    private static string Times(OperationPace pace) => pace.IsNews ? $"{(pace.PerMille / 1000m).ToString("0.##", CultureInfo.InvariantCulture)} times as long" : "as long as usual";
}
