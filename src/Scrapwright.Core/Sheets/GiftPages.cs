using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Sheets;

/// <summary>The sheets of one gift once its parts are cut: its parts go from station to station together, so their steps, drawings and cautions stand together.</summary>
internal static class GiftPages
{
    private const double GritsPt = 11;

    internal static void Add(PageFlow flow, PlanFacts facts, string giftLabel, ImmutableArray<Step> steps)
    {
        var width = flow.WidthMm;
        var gift = facts.Gift(giftLabel);
        var product = facts.Product(giftLabel);
        var made = facts.Plan.Made.FirstOrDefault(m => m.Gift == giftLabel);
        var blocks = new List<Block>();
        var gluing = steps.FirstOrDefault(s => s.Operation == Operation.Assemble);
        foreach (var step in steps) blocks.Add(StepBlock(facts, gift, product, step, width, first: step == gluing));
        blocks.Add(StationPages.Cautions(facts, steps, width, rags: gift is null || product is null));
        if (product is not null && !product.Cautions.IsEmpty) blocks.Add(Block.Caution(product.Cautions, width));
        if (product is not null && made is not null)
        {
            blocks.AddRange(Joints(facts, product, width));
            blocks.AddRange(Rods(facts, made, width));
            foreach (var part in product.Parts.Where(PartDrawing.Draws))
            {
                var marks = string.Join(" ", product.Runs.SelectMany(r => r.Members).Where(m => m.Part == part.Key).Select(m => m.Mark));
                blocks.Add(Block.Of(PartDrawing.Draw(part, marks, facts.Shop, width, 105), "", 6));
            }
        }

        var minutes = steps.Sum(s => s.HandsOnMinutes);
        var note = string.Join(" · ", new[]
        {
            product?.Summary ?? gift?.Design ?? "", gift?.Recipient is { Length: > 0 } name ? $"for {name}" : "", $"about {PlanWords.Minutes(minutes)} at work",
        }.Where(t => t.Length > 0));
        flow.Add(giftLabel, note, $"{giftLabel}: fitting, sanding, assembly and finish.", blocks);
    }

    private static Block StepBlock(PlanFacts facts, Gift? gift, Product? product, Step step, double width, bool first)
    {
        var assembly = product is not null && step.AssemblyIndex >= 0 && step.AssemblyIndex < product.Assembly.Length ? product.Assembly[step.AssemblyIndex] : null;
        var pen = new Pen();
        pen.TickBox(0, 1, 7);
        pen.Text(10, 4.8, PlanWords.Of(step.Operation), 13, true);
        var place = $"{PlanWords.Of(step.Station)} · step {step.Number} · {PlanWords.Minutes(step.HandsOnMinutes)}"
            + (step.WaitMinutes > 0 ? $" · then wait {PlanWords.Minutes(step.WaitMinutes)}" : "");
        pen.Text(width, 4.8, place, 9.5, false, Side.Right);
        var pieces = string.Join(", ", step.Works.SelectMany(w => w.In).Distinct());
        // The grits stand large at the end of the line of pieces, or where that is long, behind what to do.
        var grits = gift is not null && product is not null && step.Operation == Operation.Sand ? FinishingLines.Grits(SandingAdvice.For(facts.Plan, gift, product)) : "";
        var beside = grits.Length == 0 || Typesetting.WidthMm(pieces, 9, false) + Typesetting.WidthMm(grits, GritsPt, true) + 4 <= width - 10;
        var y = 6.6;
        if (assembly is not null)
        {
            var text = Fill(assembly.Text, assembly.Sizes.Select(facts.Sizes.Of)) + (beside ? "" : $" {grits}.");
            y += pen.Paragraph(10, y, width - 10, text, 11);
        }

        if (StationPages.SharedSetting(step) is { } setting)
            y += pen.Paragraph(10, y, width - 10, $"{StationPages.SettingWord(step.Operation)} {facts.Sizes.Of(setting)}", 13, true);

        if (beside && grits.Length > 0) pen.Text(width, y + 0.4 + FontAdvances.AscentMm(GritsPt), grits, GritsPt, true, Side.Right);
        if (pieces.Length > 0) y += pen.Paragraph(10, y + 0.4, width - 10, pieces, 9) + (beside && grits.Length > 0 ? 1 : 0.4);
        foreach (var way in step.Works.Select(w => w.Workaround).Where(w => w != Workaround.None).Distinct())
        {
            pen.Warning(10, y + 0.4, 3.8);
            y += pen.Paragraph(15, y + 0.4, width - 15, PlanWords.Of(way), 9, true) + 0.6;
        }

        if (gift is not null && product is not null)
        {
            foreach (var line in FinishingLines.For(facts.Plan, gift, product, step, first))
            {
                if (line.Warns) pen.Warning(10, y + 0.4, 3.8);
                var left = line.Warns ? 15 : 10;
                y += pen.Paragraph(left, y + 0.4, width - left, line.Text, line.Warns ? 9 : 8.5, line.Warns) + 0.3;
            }
        }

        y = Math.Max(y, 9);
        pen.Line(0, y + 1.6, width, y + 1.6, Ink.Thin);
        return new(y + 3.2, pen.Marks);
    }

    // {0}, {1} … become the lengths in the shop's unit; a text with other braces is left as it is.
    internal static string Fill(string text, IEnumerable<string> sizes)
    {
        var filled = text;
        foreach (var (i, size) in sizes.Index()) filled = filled.Replace($"{{{i}}}", size, StringComparison.Ordinal);
        return filled;
    }

    private static IEnumerable<Block> Joints(PlanFacts facts, Product product, double width)
    {
        if (product.Joints.IsEmpty) yield break;
        yield return Block.Heading("Joints", width, 11);
        var table = new Table(facts.Hatches, Table.Fit(width, 1, new Column("", 52), new("", 90), new("", 40, true)));
        foreach (var joint in product.Joints)
            foreach (var (i, size) in joint.Dimensions.Index())
                table.Row([new(i == 0 ? $"{joint.Count} × {joint.Kind}" : "", 10.5, true), new(size.Name, 10), new(facts.Sizes.Of(size.Size), 13, true)], 6.6);
        foreach (var block in table.Blocks()) yield return block;
        yield return Block.Space(4);
    }

    private static IEnumerable<Block> Rods(PlanFacts facts, MadeGift? made, double width)
    {
        if (made is null) yield break;
        var pieces = made.Parts.Select(p => p.Piece).ToHashSet();
        foreach (var rod in facts.Plan.Rods.Where(r => r.Pieces.Any(pieces.Contains)))
        {
            yield return Block.Of(RodDrawing.Draw(rod, facts, width), "", 1) with { WithNext = true };
            yield return Block.Paragraph($"From the left: {string.Join(", ", rod.Pieces)}.", width, 9);
        }
    }
}
