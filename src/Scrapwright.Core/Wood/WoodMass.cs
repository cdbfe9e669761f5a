using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Wood;

/// <summary>What wood weighs.</summary>
public static class WoodMass
{
    /// <summary>Mass of a piece, water included, from its size as it lies on the bench.</summary>
    /// <param name="species">The wood.</param>
    /// <param name="volume">Volume of the piece as measured at the moisture content given, not at 12 % and not when it was green.</param>
    /// <param name="moisturePercent">Moisture content at which it was measured and weighed, by dry mass. [%], 0 to 30</param>
    /// <returns>Mass. [g], not rounded; boards of one species differ by a tenth and more.</returns>
    /// <remarks>m = V_M · G_M · (1 + M/100) · 1 g/cm³: the specific gravity of the table stands on the volume at 12 % and is carried to the volume at M. Sources: [WoodHandbook], ch. 4; [Simpson1993].</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Moisture outside 0 to 30.</exception>
    public static double GramsOf(Species species, Volume volume, double moisturePercent)
    {
        ArgumentNullException.ThrowIfNull(species);
        double specificGravity = SpecificGravity.FromTable(species.SpecificGravity12, moisturePercent);

        // Definition: a kilogram per cubic metre is 10⁻⁶ grams per cubic millimetre.
        return volume.CubicMillimetres * SpecificGravity.DensityKgPerM3(specificGravity, moisturePercent) * 1e-6;
    }
}
