using System.Collections.Immutable;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Sheets;

/// <summary>The sheets taken to a machine: one for each visit to a station while wood is milled, in working order.</summary>
internal static class StationPages
{
    internal static void Add(PageFlow flow, PlanFacts facts, string title, ImmutableArray<Step> steps)
    {
        var width = flow.WidthMm;
        var blocks = new List<Block> { Cautions(facts, steps, width) };
        foreach (var step in steps) blocks.AddRange(StepBlocks(facts, step, width));
        var minutes = steps.Sum(s => s.HandsOnMinutes);
        var wait = steps.Max(s => s.WaitMinutes);
        var numbers = steps.Length == 1 ? $"Step {steps[0].Number}" : $"Steps {steps[0].Number} to {steps[^1].Number}";
        var note = $"{numbers} · about {PlanWords.Minutes(minutes)} at work" + (wait > 0 ? $" · then wait {PlanWords.Minutes(wait)}" : "");
        flow.Add(title, note, $"{title}: {string.Join(", ", steps.Select(s => PlanWords.Of(s.Operation)).Distinct())}.", blocks);
    }

    // With rags it warns of oily ones and of food at finishing; without where the step does so itself.
    internal static Block Cautions(PlanFacts facts, ImmutableArray<Step> steps, double width, bool rags = true)
    {
        var texts = steps.Select(s => s.Station).Distinct().SelectMany(s => StationCautions.For(s, facts.Shop, facts.Sizes)).ToList();
        if (rags && steps.Any(s => s.Station == Station.Finishing)) texts.InsertRange(0, [OilyRags.Caution, "On things for food use a finish its maker calls food safe once cured."]);
        var species = steps.SelectMany(s => s.Works.SelectMany(w => w.In).Select(id => facts.Before(s, id))).SelectMany(p => facts.Species(p)).Distinct().ToArray();
        if (steps.Any(s => StationCautions.MakesDust(s.Station))) texts.AddRange(OfSpecies("Dust, mask on. ", species, c => !AboutFood(c)));
        if (steps.Any(s => s.Station == Station.Finishing)) texts.AddRange(OfSpecies("Food: ", species, AboutFood));
        return Block.Caution(texts, width);
    }

    private static bool AboutFood(string caution) => caution.Contains("food", StringComparison.OrdinalIgnoreCase);

    // One short line a species; the sources stand in the species table, not on the bench.
    private static IEnumerable<string> OfSpecies(string lead, IEnumerable<string> species, Func<string, bool> which)
    {
        var found = species.Select(key => SpeciesTable.FindKey(key))
            .Select(s => (Species: s, Caution: s?.Cautions.FirstOrDefault(which)))
            .Where(s => s.Caution is not null)
            .Select(s => $"{FirstLetter.Large(s.Species!.Name)}: {Shorter(s.Caution!)}").ToArray();
        if (found.Length > 0) yield return lead + string.Join(". ", found) + ".";
    }

    private static string Shorter(string caution)
    {
        var end = new[] { caution.IndexOf('[', StringComparison.Ordinal), caution.IndexOf('.', StringComparison.Ordinal), caution.IndexOf(", from ", StringComparison.Ordinal), caution.IndexOf(", strength", StringComparison.Ordinal) }
            .Where(i => i > 0).DefaultIfEmpty(caution.Length).Min();
        var text = caution[..end].Trim().TrimEnd(',');
        return FirstLetter.Small(text);
    }

    private static IEnumerable<Block> StepBlocks(PlanFacts facts, Step step, double width)
    {
        var setting = SharedSetting(step);
        yield return Head(facts, step, setting, width);
        if (step.Operation == Operation.GlueUp && facts.Plan.GlueUps.FirstOrDefault(g => g.Id == step.GlueUp) is { } glueUp)
        {
            foreach (var block in GlueUpBlocks.Of(facts, glueUp, width)) yield return block;
            yield break;
        }

        if (step.Operation == Operation.CrosscutBlanks)
        {
            foreach (var block in CutBlocks(facts, step, width)) yield return block;
            yield break;
        }

        if (FaceWords.Of(facts.Plan, step, facts.Sizes.Of) is { Length: > 0 } faces) yield return Block.Paragraph(faces, width, 10, true);
        if (FaceWords.BoardOf(facts.Plan, step) is { } board)
        {
            yield return Block.Of(FacedDrawing.Draw(board, facts, width), "", 2) with { WithNext = true };
            foreach (var fact in FaceGlueAdvice.Facts(facts.Plan, board)) yield return Block.Tick($"{fact.Name}: {fact.Text}", width, 10);
        }

        if (StripWords.Of(facts.Index, step) is { Length: > 0 } strips) yield return Block.Paragraph(strips, width, 10, true);
        if (BookWords.Of(facts.Plan, step) is { Length: > 0 } book) yield return Block.Paragraph(book, width, 10, true);
        if (step.Operation == Operation.Resaw)
            foreach (var work in step.Works) yield return GlueUpBlocks.ResawSum(facts, step, work, width);

        foreach (var block in WorkTable.Blocks(facts, step, setting is null, width)) yield return block;
        yield return Block.Space(5);
    }

    /// <summary>Two cut drawings side by side, so that a visit to the saw stays on few sheets.</summary>
    private static IEnumerable<Block> CutBlocks(PlanFacts facts, Step step, double width)
    {
        const double GapMm = 8;
        var half = (width - GapMm) / 2;
        foreach (var pair in step.Works.Chunk(2))
        {
            var blocks = pair.Select(w => Cut(facts, step, w, half)).ToArray();
            yield return blocks.Length == 1 ? blocks[0] : Block.Beside(blocks[0], blocks[1], half + GapMm);
        }
    }

    private static Block Cut(PlanFacts facts, Step step, Work work, double width) => Block.Above(
        Block.Of(CutDrawing.Draw(step, work, facts, DrawingLook.Hatched, width, 34), "", 1.5),
        Readings(facts, work, SharedSetting(step) is null, width));

    private static Block Readings(PlanFacts facts, Work work, bool showStop, double width)
    {
        var pen = new Pen();
        pen.TickBox(0, 0.8);
        var text = showStop && work.Setting.IsPositive ? $"Stop at {facts.Sizes.Of(work.Setting)}" : OverviewPages.Count(work.Out.Length, "piece");
        pen.Text(7, 5, text, 12, true);
        pen.Text(width - 30, 4.6, "first one is", 8, false, Side.Right);
        pen.Box(new(width - 28, 0, 28, 6.4), Ink.Fine);
        if (work.Workaround == Workaround.None) return new(11, pen.Marks);
        pen.Warning(0, 8, 4);
        pen.Text(5, 11.6, Typesetting.Shorten(PlanWords.Of(work.Workaround), 9, true, width - 5), 9, true);
        return new(17, pen.Marks);
    }

    internal static Length? SharedSetting(Step step)
    {
        var settings = step.Works.Select(w => w.Setting).Distinct().ToArray();
        return settings is [{ IsPositive: true } only] ? only : null;
    }

    internal static Block Head(PlanFacts facts, Step step, Length? setting, double width)
    {
        var pen = new Pen();
        const double Size = 8.5;
        pen.TickBox(0, 1, Size);
        var what = step.GlueUp.Length > 0 ? step.GlueUp : FaceWords.BoardOf(facts.Plan, step)?.Label ?? "";
        var title = PlanWords.Of(step.Operation) + (what.Length > 0 ? $" · {what}" : "");
        var about = $"step {step.Number} · {PlanWords.Minutes(step.HandsOnMinutes)}" + (step.WaitMinutes > 0 ? $" · then wait {PlanWords.Minutes(step.WaitMinutes)}" : "");
        var room = width - Size - 3;
        if (setting is { } number)
        {
            var text = facts.Sizes.Of(number);
            var left = pen.Text(width, 9.2, text, 26, true, Side.Right).LeftMm;
            left = pen.Text(left - 2.5, 9.2, SettingWord(step.Operation), 10, false, Side.Right).LeftMm;
            room = left - Size - 6;
        }

        pen.Text(Size + 3, 5.6, Typesetting.Shorten(title, 15, true, room), 15, true);
        pen.Text(Size + 3, 10, Typesetting.Shorten(about, 9, false, room), 9);
        return new(13, pen.Marks) { WithNext = true };
    }

    internal static string SettingWord(Operation operation) => operation switch
    {
        Operation.FacePlane or Operation.CleanSawnFaces or Operation.PlaneToThickness or Operation.FlattenPanel or Operation.PlanePanel or Operation.Sand => "planer to",
        Operation.Rip or Operation.RoughRip or Operation.TrimWidth or Operation.Resaw or Operation.ResawStrips => "fence at",
        Operation.RoughCrosscut or Operation.CrosscutStrips or Operation.CrosscutBlanks or Operation.CutRods => "stop at",
        Operation.Drill => "bit",
        _ => "set",
    };
}
