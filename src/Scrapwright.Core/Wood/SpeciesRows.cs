using System.Collections.Immutable;
using System.Text;

namespace Scrapwright.Core.Wood;

/// <summary>Reads the species table, a comma-separated file carried inside the assembly. Anything wrong in it is a programming mistake and throws.</summary>
internal static class SpeciesRows
{
    private const string ResourceName = "Scrapwright.Core.Wood.species.csv";

    internal static ImmutableArray<Species> Read()
    {
        using Stream stream = typeof(SpeciesRows).Assembly.GetManifestResourceStream(ResourceName)
            ?? throw new InvalidOperationException($"The resource {ResourceName} is missing. Maybe the project file no longer embeds it.");
        using var reader = new StreamReader(stream, Encoding.UTF8);

        string[] header = SplitLine(reader.ReadLine() ?? throw new InvalidDataException("The species table is empty."));
        var rows = ImmutableArray.CreateBuilder<Species>();
        while (reader.ReadLine() is { } line)
        {
            string[] cells = SplitLine(line);
            if (cells.Length != header.Length)
            {
                throw new InvalidDataException($"Species row {rows.Count + 1} has {cells.Length} cells, the header has {header.Length}: {line}");
            }

            rows.Add(ToSpecies(new SpeciesRow(header, cells)));
        }

        return rows.ToImmutable();
    }

    private static Species ToSpecies(SpeciesRow row) => new()
    {
        Key = row.Text("key"),
        Name = row.Text("name"),
        FullName = row.Text("full_name"),
        ScientificName = row.Text("scientific_name"),
        Aliases = row.List("aliases"),
        SharedNames = row.List("shared_names"),
        IsHardwood = row.Text("hardwood") == "yes",
        SpecificGravity12 = row.Number("specific_gravity_12")
            ?? Math.Round(SpecificGravity.FromBasic(row.Required("specific_gravity_basic"), SpecificGravity.TableMoisturePercent), 2),
        ShrinkageRadialPercent = row.Number("shrinkage_radial"),
        ShrinkageTangentialPercent = row.Number("shrinkage_tangential"),
        ShrinkageVolumetricPercent = row.Number("shrinkage_volumetric"),
        CoefficientRadial = row.Number("coefficient_radial"),
        CoefficientTangential = row.Number("coefficient_tangential"),
        SideHardnessLbf = row.Number("hardness_lbf"),
        Colour = new LabColour(row.Required("lab_l"), row.Required("lab_a"), row.Required("lab_b")),
        Cautions = row.List("cautions"),
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

    /// <summary>Splits one line into cells; a cell with commas is in double quotes, and no cell holds a line end or a quote.</summary>
    internal static string[] SplitLine(string line)
    {
        var cells = new List<string>();
        int start = 0;
        while (start <= line.Length)
        {
            bool quoted = start < line.Length && line[start] == '"';
            int end = quoted ? line.IndexOf('"', start + 1) : line.IndexOf(',', start);
            if (quoted && end < 0)
            {
                throw new InvalidDataException($"A quote is not closed: {line}");
            }

            end = end < 0 ? line.Length : end;
            cells.Add(quoted ? line[(start + 1)..end] : line[start..end]);
            start = quoted ? end + 2 : end + 1;
        }

        return [.. cells];
    }
}
