using System.Globalization;

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

    /// <summary>Notes that a cell cannot be used.</summary>
    internal void Refuse(string column, string found, string expected, ProblemList problems)
    {
        var (at, start) = PlaceOf(column);
        problems.Add(at, start, found, expected);
    }

    /// <summary>The date in a cell; null with a problem noted when there is none.</summary>
    internal DateOnly? Date(string column, ProblemList problems)
    {
        if (DateOnly.TryParseExact(this[column], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)) return date;
        Refuse(column, this[column], FileMessages.ADate, problems);
        return null;
    }
}
