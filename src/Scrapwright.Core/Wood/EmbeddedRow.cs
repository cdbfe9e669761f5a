using System.Collections.Immutable;
using System.Globalization;

namespace Scrapwright.Core.Wood;

/// <summary>One row of an embedded table, its cells by column name. Every miss throws with the table's name and the row's first cell.</summary>
internal readonly struct EmbeddedRow(string table, string[] header, string[] cells)
{
    internal string Text(string column)
    {
        int index = Array.IndexOf(header, column);
        return index >= 0 ? cells[index] : throw new InvalidDataException($"The table {table} has no column {column}.");
    }

    internal string Required(string column) => Text(column) is { Length: > 0 } text ? text : throw Malformed(column);

    /// <summary>The parts of a cell between upright strokes.</summary>
    internal ImmutableArray<string> List(string column) =>
        [.. Text(column).Split('|', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];

    internal double? Number(string column)
    {
        string text = Text(column);
        return text.Length == 0 ? null : ToNumber(text, column);
    }

    internal double RequiredNumber(string column) => Number(column) ?? throw Malformed(column);

    internal ImmutableArray<double> Numbers(string column)
    {
        EmbeddedRow row = this;
        return [.. List(column).Select(text => row.ToNumber(text, column))];
    }

    /// <summary>True for <c>yes</c>, false for <c>no</c>.</summary>
    internal bool Flag(string column) => Text(column) switch
    {
        "yes" => true,
        "no" => false,
        _ => throw Malformed(column),
    };

    /// <summary>The member of an enumeration with the cell's name; case and hyphens do not matter.</summary>
    internal T Word<T>(string column) where T : struct, Enum =>
        Enum.TryParse(Text(column).Replace("-", "", StringComparison.Ordinal), ignoreCase: true, out T value) && Enum.IsDefined(value) ? value : throw Malformed(column);

    /// <summary>A source as <c>Key; place; how sure</c>, or null for an empty cell.</summary>
    internal ValueSource? Source(string column) => Text(column) is { Length: > 0 } text ? ToSource(text, column) : null;

    /// <summary>Sources between upright strokes; at least one.</summary>
    internal ImmutableArray<ValueSource> Sources(string column)
    {
        EmbeddedRow row = this;
        Required(column);
        return [.. List(column).Select(text => row.ToSource(text, column))];
    }

    internal ValueSource RequiredSource(string column) => Source(column) ?? throw Malformed(column);

    internal InvalidDataException Malformed(string column) =>
        new($"Table {table}, row {cells[0]}: column {column} is missing or malformed: '{Text(column)}'.");

    private ValueSource ToSource(string text, string column)
    {
        string[] parts = text.Split(';', StringSplitOptions.TrimEntries);
        return parts is [_, _, _] ? new ValueSource(parts[0], parts[1], ToConfidence(parts[2], column)) : throw Malformed(column);
    }

    private double ToNumber(string text, string column) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) ? value : throw Malformed(column);

    private Confidence ToConfidence(string word, string column) => word switch
    {
        "printed" => Confidence.Printed,
        "derived" => Confidence.Derived,
        "derived-check" => Confidence.DerivedCheck,
        "memory" => Confidence.FromMemory,
        "estimate" => Confidence.Estimate,
        _ => throw Malformed(column),
    };
}
