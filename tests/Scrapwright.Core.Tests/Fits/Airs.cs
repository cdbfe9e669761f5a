using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Fits;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Fits;

/// <summary>Climates made for tests, from the moisture that wood shall have in them.</summary>
internal static class Airs
{
    private static readonly ValueSource Made = new("OwnMeasurement", "made for a test", Confidence.Printed);

    /// <summary>The same air all year.</summary>
    internal static Climate Steady(double moisturePercent) => Year([.. Enumerable.Repeat(moisturePercent, 12)]);

    /// <summary>A year of twelve moisture contents, at 20 °C.</summary>
    internal static Climate Year(params ImmutableArray<double> moisturePercents) => OfAir([.. moisturePercents.Select(m => new ClimateMonth(20, EquilibriumMoisture.RelativeHumidityPercent(20, m)))]);

    internal static Climate OfAir(ImmutableArray<ClimateMonth> months) => new() { Key = "test", Title = "Test", Summary = "", Months = months, Source = Made };

    internal static MovingWood Across(string species, RingOrientation rings, double millimetres) =>
        new(species, rings, GrainDirection.Width, Length.FromMillimetresRounded(millimetres));

    internal static MovingWood Still(double millimetres) => new("", RingOrientation.Unknown, GrainDirection.Along, Length.FromMillimetresRounded(millimetres));
}
