using System.Collections.Immutable;

namespace Scrapwright.Core.Wood;

/// <summary>Turns the rows of the species table into species.</summary>
internal static class SpeciesRows
{
    internal static ImmutableArray<Species> Read() => [.. EmbeddedTable.Read("Wood.species.csv").Select(ToSpecies)];

    private static Species ToSpecies(EmbeddedRow row) => new()
    {
        Key = row.Text("key"),
        Name = row.Text("name"),
        FullName = row.Text("full_name"),
        ScientificName = row.Text("scientific_name"),
        Aliases = row.List("aliases"),
        SharedNames = row.List("shared_names"),
        IsHardwood = row.Flag("hardwood"),
        SpecificGravity12 = row.Number("specific_gravity_12")
            ?? Math.Round(SpecificGravity.FromBasic(row.RequiredNumber("specific_gravity_basic"), SpecificGravity.TableMoisturePercent), 2),
        ShrinkageRadialPercent = row.Number("shrinkage_radial"),
        ShrinkageTangentialPercent = row.Number("shrinkage_tangential"),
        ShrinkageVolumetricPercent = row.Number("shrinkage_volumetric"),
        CoefficientRadial = row.Number("coefficient_radial"),
        CoefficientTangential = row.Number("coefficient_tangential"),
        SideHardnessLbf = row.Number("hardness_lbf"),
        Colour = new LabColour(row.RequiredNumber("lab_l"), row.RequiredNumber("lab_a"), row.RequiredNumber("lab_b")),
        Cautions = [.. CautionsOf(row.Required("key")), .. row.List("cautions")],
        Notes = row.Text("notes"),
        Sources = new SpeciesSources
        {
            ScientificName = row.RequiredSource("scientific_name_source"),
            SpecificGravity = row.RequiredSource("specific_gravity_source"),
            Shrinkage = row.Source("shrinkage_source"),
            VolumetricShrinkage = row.Source("shrinkage_volumetric_source"),
            Coefficients = row.Source("coefficient_source"),
            SideHardness = row.Source("hardness_source"),
            Colour = row.RequiredSource("colour_source"),
        },
    };

    // What the chart and the classes say is not written into the species table again.
    private static IEnumerable<string> CautionsOf(string key) =>
        [.. WoodReactions.For(key).Select(reaction => reaction.InWords), .. DustLimits.ClassInWords(key) is { } words ? [words] : Array.Empty<string>()];
}
