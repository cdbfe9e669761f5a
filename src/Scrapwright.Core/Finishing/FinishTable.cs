using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Finishing;

/// <summary>The kinds of finish the program knows. Read once, at first use; safe from any thread.</summary>
public static class FinishTable
{
    /// <summary>Every kind, the commonest first.</summary>
    public static ImmutableArray<Finish> All => LazyRows.Value;

    /// <summary>The finish with this key, or null. Case and spaces around it do not matter.</summary>
    /// <param name="key">A <see cref="Finish.Key"/>, for example <c>drying-oil</c>; any text.</param>
    public static Finish? Find(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        return All.FirstOrDefault(finish => key.AsSpan().Trim().Equals(finish.Key, StringComparison.OrdinalIgnoreCase));
    }

    private static Finish ToFinish(EmbeddedRow row) => new()
    {
        Key = row.Required("key"),
        Name = row.Required("name"),
        IsDryingOil = row.Flag("drying_oil"),
        Method = row.Word<FinishMethod>("method"),
        Coats = int.Parse(row.Required("coats"), NumberStyles.None, CultureInfo.InvariantCulture),
        CoverageM2PerLitre = row.Band("coverage_m2l"),
        RecoatMinutes = row.Band("recoat_min"),
        HandleHours = row.Band("handle_h"),
        FoodDays = row.Band("food_d"),
        CureDays = row.Band("cure_d"),
        TemperatureCelsius = row.Band("temperature_c"),
        LastGrit = GritTable.Find(row.Required("last_grit")) ?? throw row.Malformed("last_grit"),
        Food = row.Required("food"),
        Note = row.Required("note"),
        Sources = new FinishSources
        {
            Coats = row.Sources("coats_source"),
            Coverage = row.Sources("coverage_source"),
            Recoat = row.Sources("recoat_source"),
            Handle = row.Sources("handle_source"),
            Food = row.Sources("food_source"),
            Cure = row.Sources("cure_source"),
            Temperature = row.Sources("temperature_source"),
            LastGrit = row.Sources("last_grit_source"),
        },
    };

    private static class LazyRows
    {
        internal static readonly ImmutableArray<Finish> Value = [.. EmbeddedTable.Read("Finishing.finishes.csv").Select(ToFinish)];
    }
}
