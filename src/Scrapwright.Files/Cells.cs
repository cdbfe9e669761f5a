using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;

namespace Scrapwright.Files;

/// <summary>Reads the cells of one row as values and notes what is wrong with them.</summary>
internal sealed class Cells(TableRow row, bool decimalCommas, LengthUnit bareUnit, ProblemList problems)
{
    internal bool HasProblems { get; private set; }

    internal void Refuse(string column, string expected) => Refuse(column, row[column], expected, 0);

    internal void Ask(string question) => problems.Ask(row.Line, question);

    /// <summary>A size above zero; null with a problem noted otherwise.</summary>
    internal Length? Size(string column)
    {
        if (row[column].Length == 0)
        {
            Refuse(column, FileMessages.AboveZero);
            return null;
        }

        if (Parse(column) is not { } size) return null;
        if (size.IsPositive) return size;
        Refuse(column, FileMessages.AboveZero);
        return null;
    }

    /// <summary>A size of zero or more; an empty cell is zero.</summary>
    internal Length Warp(string column) => row[column].Length == 0 ? Length.Zero : Parse(column) ?? Length.Zero;

    /// <summary>Stretches such as <c>knot 4-5; check 0-1</c>.</summary>
    internal ImmutableArray<Defect> Defects(Length length, Length width)
    {
        const string Column = "defects";
        var result = DefectList.Parse(Plain(row[Column]), length, width, bareUnit);
        if (result.IsOk) return result.Value;
        Refuse(Column, result.Error.Found.Length > 0 ? result.Error.Found : row[Column], result.Error.Expected, result.Error.Position);
        return [];
    }

    private Length? Parse(string column)
    {
        var text = row[column];
        var result = LengthParser.Parse(Plain(text), bareUnit, allowNegative: true);
        if (result.TryGetValue(out var length))
        {
            if (!length.IsNegative) return length;
            Refuse(column, FileMessages.AboveZero);
            return null;
        }

        Refuse(column, text, result.Error.Expected, result.Error.Position);
        return null;
    }

    private string Plain(string text) => decimalCommas ? text.Replace(',', '.') : text;

    private void Refuse(string column, string found, string expected, int position)
    {
        HasProblems = true;
        var (line, start) = row.PlaceOf(column);
        problems.Add(line, start == 0 ? 0 : start + position, found, expected);
    }
}
