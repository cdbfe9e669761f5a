using Scrapwright.Core.Fits;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Sheets;

/// <summary>The sheet of what the year does: fits with their plots, panels, joints across the grain, what each gift weighs.</summary>
internal static class FitPages
{
    // So much left in the tightest month needs no plot: our own choice.
    private static readonly Length Roomy = Length.FromInches(1, 4);

    internal static void Add(PageFlow flow, PlanFacts facts)
    {
        if (facts.Plan.Made.IsEmpty) return;
        var wood = new PlanWood(facts.Index);
        var fits = PlanFits.Of(wood);
        var width = flow.WidthMm;
        var blocks = new List<Block>();
        foreach (var fit in fits.Where(f => !IsRoomy(f))) blocks.Add(Fit(facts, fit, width));
        foreach (var fit in fits.Where(IsRoomy)) blocks.Add(Line($"{fit.Gift}, {fit.Fit.Title}.", FitWords.Verdict(fit.Season, facts.Shop), width));
        if (fits.Length > 0) blocks.AddRange(Notes(fits, width));
        blocks.AddRange(Joints(facts, wood, width));
        blocks.AddRange(Panels(facts, wood, width));
        blocks.AddRange(Weights(facts, wood, width));
        if (blocks.Count == 0) return;
        flow.Add("Fits through the year", "Clearances, panels and weights in the air where each gift will live", "What the seasons do to fits, panels and joints.", blocks);
    }

    private static bool IsRoomy(PlanFit fit) => fit.Season.Verdict is FitVerdict.Good && fit.Season.Most is null && fit.Season.Tightest.Clearance >= Roomy;

    // The rows below the plot stand under its months.
    private static Block Fit(PlanFacts facts, PlanFit fit, double width)
    {
        const double PlotMm = 32;
        const double RowMm = 3.6;
        const double SizePt = 8;
        var (season, shop) = (fit.Season, facts.Shop);
        var pen = new Pen();
        pen.AddAll(FitPlot.Draw(season, $"{fit.Gift}, {fit.Fit.Title}", shop, width, PlotMm).Marks);
        var y = PlotMm + 2.4;
        foreach (var (name, cell) in new (string, Func<FitMonth, string>)[]
        {
            ("moisture %", m => m.MoisturePercent.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture)),
            ("tightest", m => Number(m.Clearance, facts, Rounding.Down)),
            ("loosest", m => Number(m.MostClearance, facts, Rounding.Up)),
        })
        {
            pen.Text(0, y, name, SizePt, name == "tightest");
            foreach (var (i, month) in season.Months.Index()) pen.Text(FitPlot.MonthMm(i, width), y, cell(month), SizePt, name == "tightest", Side.Middle);
            y += RowMm;
        }

        y -= 1.2;
        if (season.Verdict is not FitVerdict.Good) pen.Warning(0, y + 0.5, 4);
        var left = season.Verdict is FitVerdict.Good ? 0 : 6;
        y += pen.Paragraph(left, y, width - left, FitWords.Verdict(season, shop), 11, true);
        y += pen.Paragraph(left, y, width - left, $"{(season.Verdict is FitVerdict.Good ? "" : FitWords.Remedy(fit.Fit, season, shop) + " ")}{Openings(facts, season)}", 9);
        return new(y + 3, pen.Marks);
    }

    private static string Openings(PlanFacts facts, SeasonFit season)
    {
        var largest = season.LargestOpening is null ? "" : $", never rattles up to {FitWords.Largest(season, facts.Shop)}";
        return $"Opening {facts.Sizes.Of(season.Opening)} when fitted; never jams from {FitWords.Smallest(season, facts.Shop)}{largest}. "
            + $"Fitted in {FitWords.Month(season.FittedMonth)} at {FitWords.Percent(season.FittedMoisturePercent)} moisture; lives in: {season.LivesIn.Title}.";
    }

    private static string Number(Length length, PlanFacts facts, Rounding rounding) => FitWords.Fine(length, facts.Shop, rounding).Split(' ')[0];

    private static IEnumerable<Block> Notes(IEnumerable<PlanFit> fits, double width)
    {
        var notes = fits.SelectMany(f => f.Season.Notes).Distinct().ToArray();
        if (notes.Length > 0) yield return Block.Paragraph(string.Join(" ", notes), width, 8.5);
        yield return Block.Space(2);
    }

    private static IEnumerable<Block> Joints(PlanFacts facts, PlanWood wood, double width)
    {
        var joints = CrossGrain.Of(wood);
        if (joints.IsEmpty) yield break;
        yield return Block.Heading("Glued across the grain", width, 11);
        var care = joints.Where(j => j.NeedsCare)
            .Select(j => $"{j.Gift}, {j.Joint.Kind}: its sides move {FitWords.Fine(j.Mismatch, facts.Shop, Rounding.Up)} apart in {FitWords.Month(j.Month)}. {j.Line.Remedy}").Distinct().ToArray();
        if (care.Length > 0) yield return Block.Caution(care, width);
        var calm = joints.Where(j => !j.NeedsCare).GroupBy(j => (j.Gift, j.Joint.Kind))
            .Select(g => $"{g.Key.Gift}, {g.Key.Kind} {FitWords.Fine(g.Max(j => j.Mismatch), facts.Shop, Rounding.Up)}").ToArray();
        if (calm.Length > 0) yield return Block.Paragraph($"Small enough to glue all over: {string.Join("; ", calm)}.", width, 9);
        yield return Block.Space(2);
    }

    private static IEnumerable<Block> Panels(PlanFacts facts, PlanWood wood, double width)
    {
        if (facts.Plan.GlueUps.IsEmpty) yield break;
        yield return Block.Heading("Panels", width, 11);
        var table = new Table(facts.Hatches, Table.Fit(width, 5,
            new Column("", 12), new("For", 30), new("In the driest month", 33), new("In the dampest month", 33), new("Ridge at a joint", 58), new("Cup (estimate)", 24)));
        foreach (var glueUp in facts.Plan.GlueUps)
        {
            var panel = PanelMovement.Of(wood, glueUp);
            table.Row(
                [
                    new(glueUp.Id, 10, true), new(PlanWords.Gifts(glueUp), 9), new(Change(panel.WidthInDriest, facts), 9), new(Change(panel.WidthInDampest, facts), 9),
                    new(panel.WorstNeighbours is { } worst ? Ridge(panel, worst, facts) : "", 9),
                    new(panel.WorstCup is { } strip ? $"{strip.Piece}: {strip.Cup!.Value.InWords.Replace(" (estimate)", "", StringComparison.Ordinal)}" : "none", 9),
                ],
                5.2);
        }

        foreach (var block in table.Blocks()) yield return block;
        yield return Block.Space(3);
    }

    private static string Change(Length change, PlanFacts facts) => change.IsZero ? "as wide" : FitWords.Change(change, facts.Shop);

    private static string Ridge(PanelMovement panel, NeighbourMovement worst, PlanFacts facts) => worst.Felt
        ? $"{(worst.IsUpTo ? "up to " : "")}{FitWords.Fine(worst.Ridge, facts.Shop, Rounding.Up)}, {panel.Strips[worst.First].Piece} to {panel.Strips[worst.First + 1].Piece}"
        : "not felt";

    private static IEnumerable<Block> Weights(PlanFacts facts, PlanWood wood, double width)
    {
        var weights = GiftWeights.Of(wood);
        if (weights.IsEmpty) yield break;
        yield return Line("Without box and wrapping:", string.Join("; ", weights.Select(w => $"{w.Gift} {w.InWords(facts.Shop)}")) + ".", width);
    }

    private static Block Line(string bold, string text, double width)
    {
        const double SizePt = 9.5;
        var pen = new Pen();
        var left = Typesetting.WidthMm(bold, SizePt, true) + 1.5;
        if (left > width / 2) return Block.Above(Block.Paragraph(bold, width, SizePt, true), Block.Paragraph(text, width, SizePt));
        pen.Paragraph(0, 0, width, bold, SizePt, true);
        var height = pen.Paragraph(left, 0, width - left, text, SizePt);
        return new(height + 1.5, pen.Marks);
    }
}
