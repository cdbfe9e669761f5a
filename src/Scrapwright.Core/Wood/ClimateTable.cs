using System.Collections.Immutable;

namespace Scrapwright.Core.Wood;

/// <summary>The climates the program knows, by kind of place. Read once, at first use; safe from any thread.</summary>
public static class ClimateTable
{
    /// <summary>Key of the climate taken where nobody has chosen.</summary>
    public const string DefaultKey = "heated-temperate";

    /// <summary>Every climate, the commonest homes first, sheds last.</summary>
    public static ImmutableArray<Climate> All => LazyRows.Value;

    /// <summary>The climate with this key, or null.</summary>
    /// <param name="key">A <see cref="Climate.Key"/>, for example <c>heated-temperate</c>; case does not matter.</param>
    public static Climate? Find(string key) => All.FirstOrDefault(climate => climate.Key.Equals(key, StringComparison.OrdinalIgnoreCase));

    private static Climate ToClimate(EmbeddedRow row) => new()
    {
        Key = row.Required("key"),
        Title = row.Required("title"),
        Summary = row.Required("summary"),
        Months = [.. row.Numbers("temperature").Zip(row.Numbers("humidity"), (celsius, percent) => ToIndoors(row, new ClimateMonth(celsius, percent)))],
        Source = row.RequiredSource("source"),
    };

    private static ClimateMonth ToIndoors(EmbeddedRow row, ClimateMonth air) => row.Text("indoors") switch
    {
        "heated" => IndoorAir.Heated(air.TemperatureCelsius),
        "cooled" => IndoorAir.Cooled(air),
        "outdoor" or "indoor" => air,
        _ => throw row.Malformed("indoors"),
    };

    private static class LazyRows
    {
        internal static readonly ImmutableArray<Climate> Value = [.. EmbeddedTable.Read("Wood.climates.csv").Select(ToClimate)];
    }
}
