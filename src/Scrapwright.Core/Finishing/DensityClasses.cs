using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Finishing;

/// <summary>Puts a wood into a class of density by its specific gravity.</summary>
/// <remarks>
/// [MakersSheets] group pine and poplar, cherry and soft maple, oak and birch. With the specific gravities of [WoodHandbook] Table 5-3b the borders lie midway
/// between yellow-poplar 0.42 and black cherry 0.50, and between red maple 0.54 and yellow birch 0.62: estimate.
/// </remarks>
public static class DensityClasses
{
    private const double MediumFrom = 0.46;
    private const double HighFrom = 0.58;

    /// <summary>The class of a specific gravity.</summary>
    /// <param name="specificGravity">Ovendry mass over the volume at 12 % moisture, over water. [1], above zero.</param>
    public static DensityClass Of(double specificGravity) =>
        specificGravity >= HighFrom ? DensityClass.High : specificGravity >= MediumFrom ? DensityClass.Medium : DensityClass.Low;

    /// <summary>The class of a species.</summary>
    public static DensityClass Of(Species species)
    {
        ArgumentNullException.ThrowIfNull(species);
        return Of(species.SpecificGravity12);
    }
}
