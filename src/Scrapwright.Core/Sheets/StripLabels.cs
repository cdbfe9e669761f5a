using System.Collections.Immutable;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Sheets;

/// <summary>Labels to cut out and stick on the strips: what it is called, which glue-up, which place in it, how wide.</summary>
public static class StripLabels
{
    private const int Across = 3;
    private const int Down = 9;

    /// <summary>Sheets of labels in the order of the glue-ups, and no sheet for a plan without glue-ups.</summary>
    public static ImmutableArray<Sheet> For(Plan plan, PaperSize paper)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(paper);
        var facts = new PlanFacts(plan, []);
        var labels = plan.GlueUps.SelectMany(g => g.Strips.Zip(Sisters.LettersOf(g.Strips)).Select((s, i) => (GlueUp: g, Strip: s.First, Place: $"place {i + 1} of {g.Strips.Length}{(s.Second.Length > 0 ? $", sister {s.Second}" : "")}"))).ToArray();
        var inside = paper.Inside;
        var (width, height) = (inside.WidthMm / Across, inside.HeightMm / Down);
        return [.. labels.Chunk(Across * Down).Select((page, number) =>
        {
            var pen = new Pen();
            foreach (var (i, label) in page.Index())
            {
                var frame = new Frame(inside.LeftMm + (i % Across * width), inside.TopMm + (i / Across * height), width, height);
                var inner = new Pen();
                Draw(inner, facts, label.GlueUp, label.Strip, label.Place, frame, (i % Across == 0, i < Across));
                pen.Add(new Mark.Group($"label {label.Strip.Piece}", inner.Marks));
            }

            return new Sheet(paper, $"Strip labels {number + 1}", "Labels to stick on the strips.", pen.Marks);
        })];
    }

    private static void Draw(Pen pen, PlanFacts facts, GlueUp glueUp, Strip strip, string place, Frame frame, (bool Column, bool Row) first)
    {
        // Each cutting line once: two dashed lines on each other would fill each other's gaps.
        pen.Line(frame.RightMm, frame.TopMm, frame.RightMm, frame.BottomMm, Ink.ThinDashed);
        pen.Line(frame.LeftMm, frame.BottomMm, frame.RightMm, frame.BottomMm, Ink.ThinDashed);
        if (first.Column) pen.Line(frame.LeftMm, frame.TopMm, frame.LeftMm, frame.BottomMm, Ink.ThinDashed);
        if (first.Row) pen.Line(frame.LeftMm, frame.TopMm, frame.RightMm, frame.TopMm, Ink.ThinDashed);
        var inner = frame.Inset(2.5);
        pen.Text(inner.LeftMm, inner.TopMm + 6, Typesetting.Shorten(strip.Piece, 20, true, inner.WidthMm - 13), 20, true);
        pen.Text(inner.RightMm, inner.TopMm + 6, Typesetting.Shorten(glueUp.Id, 14, true, 12), 14, true, Side.Right);
        pen.Text(inner.LeftMm, inner.TopMm + 11.6, place, 10);
        var width = pen.Text(inner.RightMm, inner.TopMm + 11.8, facts.Sizes.Of(strip.Width), 13, true, Side.Right);
        var species = facts.SpeciesOf(strip.Offcut);
        var swatch = new Frame(inner.LeftMm, width.BottomMm + 1.2, 9, 4);
        pen.Box(swatch, Ink.Fine);
        facts.Hatches.Fill(pen, swatch, species);
        pen.Text(inner.LeftMm + 11, swatch.BottomMm - 0.9, Typesetting.Shorten((strip.TurnedOver ? "turn over, " : "") + SpeciesTable.NameOf(species), 9, false, inner.WidthMm - 11), 9);
        GlueUpDrawing.Grain(pen, inner.LeftMm, inner.BottomMm - 0.6, inner.WidthMm);
    }
}
