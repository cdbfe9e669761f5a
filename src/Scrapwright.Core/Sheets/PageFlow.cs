using System.Collections.Immutable;

namespace Scrapwright.Core.Sheets;

/// <summary>Pours blocks onto pages under one head, and numbers the pages in the end.</summary>
internal sealed class PageFlow
{
    private const double HeadMm = 19;
    private const double FootMm = 9;
    private readonly PaperSize paper;
    private readonly PlanFacts facts;
    private readonly List<(string Title, string Note, string Summary, ImmutableArray<Mark> Marks)> pages = [];

    internal PageFlow(PaperSize paper, PlanFacts facts) => (this.paper, this.facts) = (paper, facts);

    internal double WidthMm => paper.Inside.WidthMm;

    /// <summary>Room for blocks on one page. [mm]</summary>
    internal double RoomMm => paper.Inside.HeightMm - HeadMm - FootMm;

    /// <summary>Number that the next page will have.</summary>
    internal int NextPage => pages.Count + 1;

    internal void Add(string title, string note, string summary, IReadOnlyList<Block> blocks)
    {
        var inside = paper.Inside;
        var marks = ImmutableArray.CreateBuilder<Mark>();
        double y = 0;
        var first = true;
        var begun = false;
        void Turn()
        {
            pages.Add((first ? title : $"{title} (continued)", note, summary, marks.ToImmutable()));
            marks.Clear();
            (y, first, begun) = (0, false, false);
        }

        void Place(Block block)
        {
            marks.AddRange(block.Marks.Select(m => m.Moved(inside.LeftMm, inside.TopMm + HeadMm + y)));
            y += block.HeightMm;
        }

        for (var i = 0; i < blocks.Count; i++)
        {
            var needed = blocks[i].HeightMm;
            for (var j = i; blocks[j].WithNext && j + 1 < blocks.Count; j++) needed += blocks[j + 1].HeightMm;
            if (begun && y + Math.Min(needed, RoomMm) > RoomMm) Turn();
            if (!begun && !first && blocks[i].Again is { } again) Place(again);
            if (!begun && blocks[i].Marks.IsEmpty && !first) continue;
            Place(blocks[i]);
            begun = true;
        }

        if (begun || first) Turn();
    }

    internal ImmutableArray<Sheet> Sheets() => [.. pages.Select((p, i) => Finish(p.Title, p.Note, p.Summary, p.Marks, i + 1))];

    private Sheet Finish(string title, string note, string summary, ImmutableArray<Mark> marks, int number)
    {
        var inside = paper.Inside;
        var pen = new Pen();
        var tab = new Frame(inside.LeftMm, inside.TopMm, 13, 13);
        pen.Box(tab, null, Ink.Black);
        pen.Text(tab.Middle.XMm, tab.Middle.YMm + (FontAdvances.CapitalMm(20) / 2), $"{number}", number < 100 ? 20 : 15, true, Side.Middle, Ink.White);
        var left = inside.LeftMm + 16.5;
        var noteWidth = 58;
        var titleWidth = inside.RightMm - left - noteWidth - 2;
        var titlePt = new[] { 21.0, 18, 15 }.FirstOrDefault(s => Typesetting.WidthMm(title, s, true) <= titleWidth, 15);
        pen.Text(left, inside.TopMm + 6.6, Typesetting.Shorten(title, titlePt, true, titleWidth), titlePt, true);
        pen.Text(left, inside.TopMm + 12.2, Typesetting.Shorten(note, 10, false, inside.RightMm - left - 2), 10);
        pen.Text(inside.RightMm, inside.TopMm + 3, Typesetting.Shorten(facts.Plan.Request.Workshop, 9, true, noteWidth), 9, true, Side.Right);
        pen.Text(inside.RightMm, inside.TopMm + 7, $"sheet {number} of {pages.Count} · plan {Short(facts.Plan.Fingerprint)}", 8, false, Side.Right);
        pen.Line(inside.LeftMm, inside.TopMm + 15, inside.RightMm, inside.TopMm + 15, Ink.Thick);
        pen.AddAll(marks);
        Foot(pen, inside);
        return new(paper, title, summary, pen.Marks);
    }

    // A bar of known length, so that a page printed at another size is noticed before something is cut by it.
    private void Foot(Pen pen, Frame inside)
    {
        var inch = facts.Sizes.Unit == Measures.LengthUnit.Inch;
        var length = inch ? 50.8 : 50;
        var y = inside.BottomMm - 2.6;
        pen.Line(inside.LeftMm, inside.BottomMm - 6.4, inside.RightMm, inside.BottomMm - 6.4, Ink.Fine);
        pen.Text(inside.LeftMm, y + 1.2, StationCautions.First, 8, true);
        var right = inside.RightMm;
        pen.Add(new Mark.Group("check bar", [new Mark.Line(new(right - length, y), new(right, y), Ink.Medium)]));
        pen.Line(right - length, y - 1.5, right - length, y + 1.5, Ink.Medium);
        pen.Line(right, y - 1.5, right, y + 1.5, Ink.Medium);
        pen.Text(right - length - 2, y + 1.2, $"This bar is {(inch ? "2 in" : "50 mm")}, or print at 100 %", 8, false, Side.Right);
    }

    private static string Short(string fingerprint) => fingerprint.Length > 7 ? fingerprint[..7] : fingerprint;
}
