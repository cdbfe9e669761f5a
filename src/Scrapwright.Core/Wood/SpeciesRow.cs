using System.Collections.Immutable;
using System.Globalization;

namespace Scrapwright.Core.Wood;

/// <summary>One row of the species table, its cells by column name. Every miss throws with the row's key.</summary>
internal readonly struct SpeciesRow(string[] header, string[] cells)
{
    internal string Text(string column)
    {
        int index = Array.IndexOf(header, column);
        return index >= 0 ? cells[index] : throw new InvalidDataException($"The species table has no column {column}.");
    }

    internal ImmutableArray<string> List(string column) =>
        [.. Text(column).Split('|', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];

    internal double? Number(string column)
    {
        string text = Text(column);
        return text.Length == 0 ? null : double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
    }

    internal double Required(string column) => Number(column) ?? throw Missing(column);

    internal ValueSource? Source(string column)
    {
        string text = Text(column);
        if (text.Length == 0)
        {
            return null;
        }

        string[] parts = text.Split(';', StringSplitOptions.TrimEntries);
        return parts.Length == 3 ? new ValueSource(parts[0], parts[1], ToConfidence(parts[2])) : throw Missing(column);
    }

    internal ValueSource RequiredSource(string column) => Source(column) ?? throw Missing(column);

    private static Confidence ToConfidence(string word) => word switch
    {
        "printed" => Confidence.Printed,
        "derived" => Confidence.Derived,
        "derived-check" => Confidence.DerivedCheck,
        "memory" => Confidence.FromMemory,
        "estimate" => Confidence.Estimate,
        _ => throw new InvalidDataException($"'{word}' is no word for how sure a value is."),
    };

    private InvalidDataException Missing(string column) => new($"Species {cells[0]}: column {column} is missing or malformed.");
}
