using System.Collections.Immutable;

namespace Scrapwright.Core.Sheets;

/// <summary>A piece of a page that is never split: marks from an upper left corner at zero, and the height they need.</summary>
/// <param name="HeightMm">Height, space below included. [mm]</param>
/// <param name="Marks">The marks.</param>
internal sealed record Block(double HeightMm, ImmutableArray<Mark> Marks)
{
    /// <summary>True when the next block must stand on the same page.</summary>
    internal bool WithNext { get; init; }

    /// <summary>A heading drawn again when this block begins a page.</summary>
    internal Block? Again { get; init; }

    internal static Block Space(double heightMm) => new(heightMm, []);

    /// <summary>Two blocks as one, the second to the right of the first.</summary>
    internal static Block Beside(Block left, Block right, double rightAtMm) =>
        new(Math.Max(left.HeightMm, right.HeightMm), [.. left.Marks, .. right.Marks.Select(m => m.Moved(rightAtMm, 0))]);

    /// <summary>Two blocks as one, the second below the first.</summary>
    internal static Block Above(Block upper, Block lower) =>
        new(upper.HeightMm + lower.HeightMm, [.. upper.Marks, .. lower.Marks.Select(m => m.Moved(0, upper.HeightMm))]);

    internal static Block Heading(string text, double widthMm, double sizePt = 13)
    {
        var pen = new Pen();
        var height = pen.Paragraph(0, 1.5, widthMm, text, sizePt, bold: true);
        return new(height + 2.5, pen.Marks) { WithNext = true };
    }

    internal static Block Paragraph(string text, double widthMm, double sizePt = 10, bool bold = false)
    {
        var pen = new Pen();
        var height = pen.Paragraph(0, 0, widthMm, text, sizePt, bold);
        return new(height + 1, pen.Marks);
    }

    internal static Block Of(Drawing drawing, string caption, double belowMm = 4)
    {
        var pen = new Pen();
        double top = 0;
        if (caption.Length > 0) top = pen.Paragraph(0, 0, drawing.WidthMm, caption, 9) + 1;
        pen.Add(new Mark.Group(drawing.Title, [.. drawing.Marks.Select(m => m.Moved(0, top))]));
        return new(drawing.HeightMm + top + belowMm, pen.Marks);
    }

    /// <summary>A tick box and a line of text.</summary>
    internal static Block Tick(string text, double widthMm, double sizePt = 11)
    {
        var pen = new Pen();
        pen.TickBox(0, 0.6);
        var height = pen.Paragraph(7, 0.4, widthMm - 7, text, sizePt);
        return new(Math.Max(6.4, height + 1.2), pen.Marks);
    }

    /// <summary>Warning sign and text.</summary>
    internal static Block Caution(IEnumerable<string> texts, double widthMm, double sizePt = 9)
    {
        var pen = new Pen();
        var lines = texts.Select(t => (Text: t, Height: (Typesetting.Wrap(t, sizePt, false, widthMm - 11).Length * Pen.LineMm(sizePt)) + 0.4)).ToArray();
        var needed = lines.Sum(l => l.Height);
        var height = Math.Max(needed + 2.4, 8);
        var top = (height - needed) / 2;
        foreach (var (text, lineMm) in lines)
        {
            pen.Paragraph(9, top, widthMm - 11, text, sizePt);
            top += lineMm;
        }

        var box = new Pen();
        box.Box(new(0, 0, widthMm, height), Ink.Fine);
        box.Warning(2, (height - 5) / 2, 5);
        box.AddAll(pen.Marks);
        return new(height + 3, box.Marks);
    }
}
