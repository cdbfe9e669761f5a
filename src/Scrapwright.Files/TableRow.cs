namespace Scrapwright.Files;

/// <summary>One row of a table.</summary>
internal sealed class TableRow(int line, string[] cells, IReadOnlyList<(int Line, int Column)> places, IReadOnlyDictionary<string, int> columns)
{
    /// <summary>The line it begins in, from 1.</summary>
    internal int Line => line;

    /// <summary>The cell without blanks around it; empty when the column or the cell is not there.</summary>
    internal string this[string column] => columns.TryGetValue(column, out var index) && index < cells.Length ? cells[index].Trim() : "";

    /// <summary>Where the cell begins.</summary>
    internal (int Line, int Column) PlaceOf(string column) =>
        columns.TryGetValue(column, out var index) && index < places.Count ? places[index] : places.Count > 0 ? (line, 0) : (line, 1);
}
