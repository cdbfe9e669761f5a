using System.Collections.Immutable;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Sheets;

/// <summary>A table that may run over pages: its heading is drawn again.</summary>
internal sealed class Table
{
    private const double GapMm = 2;
    private const double SwatchMm = 12;
    private readonly ImmutableArray<Column> columns;
    private readonly Hatches hatches;
    private readonly List<Block> rows = [];

    internal Table(Hatches hatches, params ImmutableArray<Column> columns) => (this.hatches, this.columns) = (hatches, columns);

    private double WidthMm => columns.Sum(c => c.WidthMm);

    /// <summary>The columns with the spare width of the page given to the one named.</summary>
    internal static ImmutableArray<Column> Fit(double widthMm, int spare, params ImmutableArray<Column> columns) =>
        columns.SetItem(spare, columns[spare] with { WidthMm = columns[spare].WidthMm + widthMm - columns.Sum(c => c.WidthMm) });

    internal void Row(ImmutableArray<Cell> cells, double leastMm = 6, string note = "", bool rule = true, bool withNext = false)
    {
        var heights = cells.Zip(columns, HeightMm).ToArray();
        var height = Math.Max(leastMm, heights.Max() + 1.6);
        var pen = new Pen();
        double x = 0;
        for (var i = 0; i < cells.Length; i++)
        {
            Draw(pen, cells[i], columns[i], x, height, heights[i]);
            x += columns[i].WidthMm;
        }

        if (note.Length > 0)
        {
            var left = columns[0].WidthMm;
            pen.Warning(left, height + 0.2, 3.6);
            height += pen.Paragraph(left + 5, height, WidthMm - left - 5, note, 9, bold: true) + 1.2;
        }

        if (rule) pen.Line(0, height, WidthMm, height, Ink.Thin);
        rows.Add(new(height, pen.Marks) { WithNext = withNext });
    }

    internal IReadOnlyList<Block> Blocks()
    {
        if (columns.All(c => c.Title.Length == 0)) return rows;
        var head = Head();
        return [head, .. rows.Select(r => r with { Again = head })];
    }

    private Block Head()
    {
        var pen = new Pen();
        double x = 0;
        foreach (var column in columns)
        {
            var text = Typesetting.Shorten(column.Title, 8, false, column.WidthMm - GapMm);
            if (column.Right) pen.Text(x + column.WidthMm - GapMm, 3.4, text, 8, false, Side.Right);
            else pen.Text(x, 3.4, text, 8);
            x += column.WidthMm;
        }

        pen.Line(0, 4.8, WidthMm, 4.8, Ink.Medium);
        return new(4.8, pen.Marks) { WithNext = true };
    }

    private static double HeightMm(Cell cell, Column column) => cell.Kind switch
    {
        CellKind.TickBox => 4.5,
        CellKind.PencilBox => 6.2,
        CellKind.Swatch => Math.Max(4, LinesOf(cell with { Text = SpeciesTable.NameOf(cell.Text) }, column.WidthMm - SwatchMm - GapMm) * Pen.LineMm(cell.SizePt)),
        _ => LinesOf(cell, column.WidthMm - GapMm) * Pen.LineMm(cell.SizePt),
    };

    private static int LinesOf(Cell cell, double widthMm) => Typesetting.Wrap(cell.Text, cell.SizePt, cell.Bold, widthMm).Length;

    private void Draw(Pen pen, Cell cell, Column column, double xMm, double rowMm, double cellMm)
    {
        var top = (rowMm - cellMm) / 2;
        switch (cell.Kind)
        {
            case CellKind.TickBox:
                pen.TickBox(xMm, top);
                break;
            case CellKind.PencilBox:
                pen.Box(new(xMm, top, column.WidthMm - GapMm, cellMm), Ink.Fine);
                break;
            case CellKind.Swatch:
                var field = new Frame(xMm, (rowMm - 4.4) / 2, SwatchMm - 1.8, 4.4);
                if (cell.Text.Length == 0) break;
                pen.Box(field, Ink.Fine);
                hatches.Fill(pen, field, cell.Text);
                Lines(pen, cell with { Text = SpeciesTable.NameOf(cell.Text) }, column, xMm + SwatchMm, top, column.WidthMm - SwatchMm - GapMm);
                break;
            default:
                Lines(pen, cell, column, xMm, top, column.WidthMm - GapMm);
                break;
        }
    }

    private static void Lines(Pen pen, Cell cell, Column column, double xMm, double topMm, double widthMm)
    {
        var y = topMm + ((Pen.LineMm(cell.SizePt) + FontAdvances.CapitalMm(cell.SizePt)) / 2);
        foreach (var line in Typesetting.Wrap(cell.Text, cell.SizePt, cell.Bold, widthMm))
        {
            if (column.Right) pen.Text(xMm + widthMm, y, line, cell.SizePt, cell.Bold, Side.Right);
            else pen.Text(xMm, y, line, cell.SizePt, cell.Bold);
            y += Pen.LineMm(cell.SizePt);
        }
    }
}
