using Scrapwright.Core.Finishing;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Chances;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Sheets;

/// <summary>What a sheet shows of a glue-up: drawing, clamps, chance, ladders, resaw sum.</summary>
internal static class GlueUpBlocks
{
    private const double PlotMm = 22;

    internal static IEnumerable<Block> Of(PlanFacts facts, GlueUp glueUp, double width)
    {
        yield return Block.Of(GlueUpDrawing.Draw(glueUp, facts, DrawingLook.Hatched, width, 90), "", 2) with { WithNext = true };
        if (BookWords.Of(glueUp) is { Length: > 0 } book) yield return Block.Paragraph(book, width, 10, true);
        yield return Facts(facts, glueUp, width);
        var advice = GlueUpAdvice.For(facts.Index, glueUp);
        if (!advice.Cautions.IsEmpty) yield return Block.Caution(advice.Cautions, width, 8.5) with { WithNext = true };
        yield return Ladders(facts, glueUp, advice, width);
    }

    // (start − kerfs) ÷ layers − clean-up, compared with what a layer needs.
    internal static Block ResawSum(PlanFacts facts, Step step, Work work, double width)
    {
        var piece = facts.Before(step, work.In[0]);
        var layers = work.Out.Length;
        var glueUp = facts.Plan.GlueUps.FirstOrDefault(g => g.Id == (step.GlueUp.Length > 0 ? step.GlueUp : work.In[0]));
        if (piece is null || glueUp is null || facts.PartOf(glueUp.Gift, glueUp.Part) is not { } part) return Block.Space(0);
        var sizes = facts.Sizes;
        var target = new PanelNeeds(part, glueUp.Blanks, glueUp.Layers, facts.Shop).PlanedThickness;
        var sum = new ResawDecision(piece.Thickness, layers, work.Kerf, facts.Shop.Allowances.ResawCleanUp.Mean, target);
        var kerfs = layers == 2 ? sizes.Of(sum.Kerf) : $"{layers - 1} × {sizes.Of(sum.Kerf)}";
        return Block.Paragraph(
            $"{work.In[0]}: ({sizes.Of(sum.Start)} − {kerfs} kerf) ÷ {layers} − {sizes.Of(sum.CleanUp)} clean-up = {sizes.Of(sum.Layer)} {(sum.Works ? "≥" : "<")} {sizes.About(target)}",
            width, 11, true);
    }

    private static Block Facts(PlanFacts facts, GlueUp glueUp, double width)
    {
        var pen = new Pen();
        var texts = new[]
        {
            $"for {PlanWords.Gifts(glueUp)}", $"{OverviewPages.Count(glueUp.ClampsNeeded, "clamp")}",
            $"holds its size {PlanWords.Chance(glueUp.ChancePerMille)}",
            OverviewPages.Count(glueUp.Blanks, "blank") + (glueUp.Layers > 1 ? $" × {glueUp.Layers} layers" : ""),
        };
        double x = 0;
        foreach (var task in new[] { "dry run", "glue on", "scraped" })
        {
            pen.TickBox(x, 0.6);
            x = pen.Text(x + 6, 4.3, task, 10).RightMm + 5;
        }

        // On the line of the boxes where it fits, so that two glue-ups stand on one page.
        var line = string.Join(" · ", texts);
        if (Typesetting.WidthMm(line, 10, true) <= width - x)
        {
            pen.Text(width, 4.3, line, 10, true, Side.Right);
            return new(8, pen.Marks) { WithNext = true };
        }

        pen.Text(0, 10.4, Typesetting.Shorten(line, 10, true, width), 10, true);
        return new(14, pen.Marks) { WithNext = true };
    }

    // The width ladder is the shorter one, so the advice stands below it. The name of each line is bold.
    private static double Advice(Pen pen, GlueUpAdvice advice, double xMm, double topMm, double widthMm)
    {
        const double SizePt = 8.5;
        const double GapMm = 1.5;
        var y = topMm + 1;
        foreach (var fact in advice.Facts)
        {
            var name = Typesetting.WidthMm(fact.Name, SizePt, true) + GapMm;
            pen.Paragraph(xMm, y, widthMm, fact.Name, SizePt, true);
            y += pen.Paragraph(xMm + name, y, widthMm - name, fact.Text, SizePt);
        }

        return y;
    }

    private static Block Ladders(PlanFacts facts, GlueUp glueUp, GlueUpAdvice advice, double width)
    {
        var pen = new Pen();
        var half = (width - 6) / 2;
        var left = Ladder(pen, facts, 0, half, "Thickness", glueUp.ThicknessLadder);
        var right = Ladder(pen, facts, half + 6, half, "Width", glueUp.WidthLadder);
        if (!advice.Facts.IsEmpty) right = Advice(pen, advice, half + 6, right, half);
        if (facts.Chances.FindPanel(glueUp.Id) is { } chance)
        {
            // Below the shorter of the two columns.
            var (x, top) = left <= right ? (0.0, left + 2) : (half + 6, right + 2);
            pen.AddAll(WidthPlot.Draw(chance, facts.Shop, half, PlotMm).Marks.Select(m => m.Moved(x, top)));
            pen.Text(x + half, top + PlotMm + 2.2, $"wide enough {PlanWords.Chance(SizeChances.ToPerMille(chance.Sizes.Width))}", 8, false, Side.Right);
            (left, right) = left <= right ? (top + PlotMm + 3, right) : (left, top + PlotMm + 3);
        }

        return new(Math.Max(left, right) + 4.5, pen.Marks);
    }

    // Two rungs of one operation (the least it takes, then the rest down to size) are one visit to the machine.
    private static IEnumerable<(Operation Operation, Length Taken, Length After)> Merged(Ladder ladder)
    {
        for (var i = 0; i < ladder.Rungs.Length; i++)
        {
            var (operation, taken, after, _) = ladder.Rungs[i];
            while (i + 1 < ladder.Rungs.Length && ladder.Rungs[i + 1].Operation == operation)
            {
                i++;
                taken += ladder.Rungs[i].Taken;
                after = ladder.Rungs[i].After;
            }

            yield return (operation, taken, after);
        }
    }

    private static double Ladder(Pen pen, PlanFacts facts, double xMm, double widthMm, string title, Ladder ladder)
    {
        const double RowMm = 5.4;
        pen.Text(xMm, 3.6, $"{title} ladder", 8);
        pen.Text(xMm + widthMm, 3.6, "take · leaves", 8, false, Side.Right);
        pen.Line(xMm, 4.8, xMm + widthMm, 4.8, Ink.Medium);
        var y = 4.8;
        void Row(string name, string taken, Length after)
        {
            var end = pen.Text(xMm + widthMm, y + 4.2, facts.Sizes.Of(after), 11, true, Side.Right).LeftMm;
            end = taken.Length == 0 ? end : pen.Text(Math.Min(end - 3, xMm + (widthMm * 0.72)), y + 4.2, taken, 9, false, Side.Right).LeftMm;
            pen.Text(xMm, y + 4.2, Typesetting.Shorten(name, 9.5, false, end - xMm - 2), 9.5);
            y += RowMm;
            pen.Line(xMm, y, xMm + widthMm, y, Ink.Thin);
        }

        Row("glued", "", ladder.Start);
        foreach (var (operation, taken, after) in Merged(ladder)) Row(PlanWords.Of(operation), $"− {facts.Sizes.About(taken)}", after);
        return y;
    }
}
