using System.Collections.Immutable;

namespace Scrapwright.Core.Wood;

/// <summary>One kind of wood with what the bench needs to know of it. Every number has its source in <see cref="Sources"/>; a missing number is null, never zero.</summary>
public sealed record Species
{
    /// <summary>Stable name for files and links: the full name in lower case with hyphens, for example <c>black-walnut</c>.</summary>
    public required string Key { get; init; }

    /// <summary>Short trade name as a maker says it, for example <c>walnut</c> or <c>hard maple</c>. Unique in the table.</summary>
    public required string Name { get; init; }

    /// <summary>Full common name, for example <c>Black walnut</c>.</summary>
    public required string FullName { get; init; }

    /// <summary>Botanical name; of a trade group, the genus with <c>spp.</c> Most are from memory: see <see cref="SpeciesSources.ScientificName"/>.</summary>
    public required string ScientificName { get; init; }

    /// <summary>Other names that mean this species.</summary>
    public required ImmutableArray<string> Aliases { get; init; }

    /// <summary>Words that may mean this species but that <see cref="SpeciesTable.Find(string)"/> gives to a commoner one, for example <c>oak</c> for white oak.</summary>
    public required ImmutableArray<string> SharedNames { get; init; }

    /// <summary>True for broad-leaved trees, false for conifers. Says nothing of how hard the wood is.</summary>
    public required bool IsHardwood { get; init; }

    /// <summary>Specific gravity: ovendry mass over volume at 12 % moisture content, over water. [1], about 0.3 to 1.1.</summary>
    public required double SpecificGravity12 { get; init; }

    /// <summary>Density of the wood at 12 % moisture content, water included. [kg/m³]</summary>
    public double DensityKgPerM3 => SpecificGravity.DensityKgPerM3(SpecificGravity12, SpecificGravity.TableMoisturePercent);

    /// <summary>Radial shrinkage from green to ovendry, of the green size. [%]</summary>
    public double? ShrinkageRadialPercent { get; init; }

    /// <summary>Tangential shrinkage from green to ovendry, of the green size. [%]</summary>
    public double? ShrinkageTangentialPercent { get; init; }

    /// <summary>Volumetric shrinkage from green to ovendry, of the green volume. [%]</summary>
    public double? ShrinkageVolumetricPercent { get; init; }

    /// <summary>Radial dimensional change coefficient: change of size per 1 % of moisture content. [1/%], for 6 to 14 % moisture.</summary>
    public double? CoefficientRadial { get; init; }

    /// <summary>Tangential dimensional change coefficient: change of size per 1 % of moisture content. [1/%], for 6 to 14 % moisture.</summary>
    public double? CoefficientTangential { get; init; }

    /// <summary>Force that presses a 0.444 in ball half its diameter into the side grain at 12 % moisture. [lbf]</summary>
    public double? SideHardnessLbf { get; init; }

    /// <summary>Colour of freshly planed heartwood, CIELAB under D65.</summary>
    public required LabColour Colour { get; init; }

    /// <summary>True when <see cref="Colour"/> is an estimate and not a measurement. True of every species so far: no published table could be read.</summary>
    public bool ColourIsEstimate => Sources.Colour.Confidence == Confidence.Estimate;

    /// <summary><see cref="Colour"/> as an sRGB colour for screens, <c>#rrggbb</c>.</summary>
    public string DisplayHex => Colour.ToSrgb().Hex;

    /// <summary>What to be careful of, each ending in its source or in "Common practice, no source". Empty does not mean harmless: all wood dust is bad for the lungs.</summary>
    public required ImmutableArray<string> Cautions { get; init; }

    /// <summary>Oddities of the values, empty when there are none.</summary>
    public required string Notes { get; init; }

    /// <summary>Where each value comes from.</summary>
    public required SpeciesSources Sources { get; init; }

    /// <summary>The short name.</summary>
    public override string ToString() => Name;
}
