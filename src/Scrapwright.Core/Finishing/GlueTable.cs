using System.Collections.Immutable;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Finishing;

/// <summary>The kinds of glue the program knows. Read once, at first use; safe from any thread.</summary>
public static class GlueTable
{
    /// <summary>Every kind, the commonest first.</summary>
    public static ImmutableArray<Glue> All => LazyRows.Value;

    /// <summary>The glue with this key, or null. Case and spaces around it do not matter.</summary>
    /// <param name="key">A <see cref="Glue.Key"/>, for example <c>white-glue</c>; any text.</param>
    public static Glue? Find(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        return All.FirstOrDefault(glue => key.AsSpan().Trim().Equals(glue.Key, StringComparison.OrdinalIgnoreCase));
    }

    private static Glue ToGlue(EmbeddedRow row) => new()
    {
        Key = row.Required("key"),
        Name = row.Required("name"),
        Water = row.Required("water"),
        OpenMinutes = row.Band("open_min"),
        ClampMinutes = row.Band("clamp_min"),
        CureHours = row.Band("cure_h"),
        MinimumCelsius = row.Band("minimum_c"),
        SpreadGramsPerM2 = row.Band("spread_gm2"),
        LowKilopascals = row.Band("pressure_low_kpa"),
        MediumKilopascals = row.Band("pressure_medium_kpa"),
        HighKilopascals = row.Band("pressure_high_kpa"),
        Oily = row.Required("oily"),
        EndGrain = row.Required("end_grain"),
        Food = row.Required("food"),
        Sources = new GlueSources
        {
            Water = row.Sources("water_source"),
            Open = row.Sources("open_source"),
            Clamp = row.Sources("clamp_source"),
            Cure = row.Sources("cure_source"),
            Minimum = row.Sources("minimum_source"),
            Spread = row.Sources("spread_source"),
            Low = row.Sources("pressure_low_source"),
            Medium = row.Sources("pressure_medium_source"),
            High = row.Sources("pressure_high_source"),
        },
    };

    private static class LazyRows
    {
        internal static readonly ImmutableArray<Glue> Value = [.. EmbeddedTable.Read("Finishing.glues.csv").Select(ToGlue)];
    }
}
