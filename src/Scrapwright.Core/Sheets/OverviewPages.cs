using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Fits;
using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Sheets;

/// <summary>The first sheets: what comes of the plan, what to do in which order, what to buy, every part, how the woods are drawn.</summary>
internal static class OverviewPages
{
    internal static void Add(PageFlow flow, PlanFacts facts, IReadOnlyList<(string Title, ImmutableArray<Step> Steps)> visits, int firstVisitPage, IReadOnlyList<int> visitPages)
    {
        var plan = facts.Plan;
        var width = flow.WidthMm;
        var minutes = plan.Steps.Sum(s => s.HandsOnMinutes);
        var note = $"{plan.Made.Length} of {plan.Made.Length + plan.Unmade.Length} gifts · {Count(plan.GlueUps.Length, "glue-up")} · {Count(plan.Steps.Length, "step")} · about {PlanWords.Minutes(minutes)} at work";
        var blocks = new List<Block>();
        // Before any saw runs.
        if (PileMoisture.Of(plan) is { } moisture) blocks.Add(Block.Caution([moisture.InWords(facts.Shop)], width, 11));
        blocks.AddRange(Gifts(facts, width));
        blocks.AddRange(Order(facts, visits, firstVisitPage, visitPages, width));
        blocks.AddRange(Shopping(facts, width));
        blocks.AddRange(Woods(facts, width));
        flow.Add("What to do", note, $"Overview of the plan: {note}.", blocks);
    }

    internal static void AddParts(PageFlow flow, PlanFacts facts)
    {
        var blocks = new List<Block>();
        foreach (var made in facts.Plan.Made)
        {
            blocks.Add(Block.Heading($"{made.Gift} · {facts.Product(made.Gift)?.Summary ?? facts.Gift(made.Gift)?.Design ?? ""}", flow.WidthMm, 12));
            var table = new Table(facts.Hatches, Table.Fit(flow.WidthMm, 3,
                new Column("", 7), new("Part", 40), new("Finished size", 58), new("Written on it", 40)));
            foreach (var group in made.Parts.GroupBy(p => p.Part))
            {
                var part = facts.PartOf(made.Gift, group.Key);
                var last = facts.Last(group.First().Piece);
                var size = part is null
                    ? last is null ? "" : facts.Sizes.Box(last.Length, last.Width, last.Thickness)
                    : part.Kind == PartKind.Rod ? $"Ø{Typesetting.Tie}{facts.Sizes.About(part.Width)}, {facts.Sizes.About(part.Length)} long"
                    : facts.Sizes.Box(part.Length, part.Width, part.Thickness);
                table.Row([Cell.Tick, new($"{group.Count()} × {part?.Title ?? group.Key}", 10.5), new(size, 12, true), new(string.Join(", ", group.Select(p => p.Piece)), 9)], 7);
            }

            blocks.AddRange(table.Blocks());
            blocks.Add(Block.Space(4));
        }

        if (blocks.Count > 0) flow.Add("Parts list", "Finished sizes: length along the grain × width × thickness", "Every part with its finished size.", blocks);
    }

    private static IEnumerable<Block> Gifts(PlanFacts facts, double width)
    {
        var table = new Table(facts.Hatches, Table.Fit(width, 1, new Column("Gift", 30), new("What", 60), new("For", 32), new("Due", 22), new("Holds its size", 46)));
        foreach (var made in facts.Plan.Made)
        {
            var gift = facts.Gift(made.Gift);
            var chance = made.ChancePerMille is { } perMille ? PlanWords.Chance(perMille) : "";
            table.Row(
                [new(made.Gift, 11, true), new(facts.Product(made.Gift)?.Summary ?? gift?.Design ?? "", 9.5), new(gift?.Recipient ?? "", 9.5), new(Date(gift?.Due), 9.5), new(chance, 9.5)], 6.4);
        }

        foreach (var block in table.Blocks()) yield return block;
        foreach (var block in Differences(facts, width)) yield return block;
        if (facts.Plan.Unmade.IsEmpty) yield break;
        yield return Block.Space(2);
        yield return Block.Heading("Not this time", width, 11);
        var missing = new Table(facts.Hatches, Table.Fit(width, 1, new Column("", 30), new("", 100)));
        foreach (var unmade in facts.Plan.Unmade)
        {
            missing.Row(
                [new(unmade.Gift, 11, true), new("Missing: " + string.Join("; or ", unmade.Reasons.Select(r => ReasonText.Write(r, facts.Sizes.Style, key => facts.PartTitle(unmade.Gift, key), Typesetting.Tie))) + ".", 9.5)], 6);
        }

        foreach (var block in missing.Blocks()) yield return block;
    }

    private static IEnumerable<Block> Differences(PlanFacts facts, double width)
    {
        var differences = GiftDifference.WorthALook(facts.Index);
        if (differences.IsEmpty) yield break;
        yield return Block.Space(2);
        yield return Block.Heading("Beside each other", width, 11);
        var table = new Table(facts.Hatches, Table.Fit(width, 1, new Column("Circle", 30), new("Gifts", 60), new("Mean ΔE", 20, true), new("", 60)));
        foreach (var pair in differences)
            table.Row([new(pair.Circle, 9.5), new($"{pair.One}, {pair.Other}", 10.5, true), new(pair.DeltaE is { } deltaE ? deltaE.ToString("0.0", CultureInfo.InvariantCulture) : "", 10.5, true), new(pair.Words, 9.5)], 5.6);
        foreach (var block in table.Blocks()) yield return block;
    }

    // The first stretch of work ends where the plan first has to wait: glue in the clamps.
    private static IEnumerable<Block> Order(
        PlanFacts facts, IReadOnlyList<(string Title, ImmutableArray<Step> Steps)> visits, int firstPage, IReadOnlyList<int> pages, double width)
    {
        if (visits.Count == 0) yield break;
        yield return Block.Space(3);
        yield return Block.Heading("First, in this order", width);
        var waited = false;
        Table? table = null;
        for (var i = 0; i < visits.Count; i++)
        {
            var (title, steps) = visits[i];
            table ??= new Table(facts.Hatches, Table.Fit(width, 2,
                new Column("", 7), new("Where", 44), new("What", 60), new("Steps", 20, true), new("At work", 24, true), new("Then wait", 22, true), new("Sheet", 14, true)));
            var what = string.Join(", ", steps.Select(s => PlanWords.Of(s.Operation)).Distinct());
            var wait = steps.Max(s => s.WaitMinutes);
            var numbers = steps.Length == 1 ? $"{steps[0].Number}" : $"{steps[0].Number}–{steps[^1].Number}";
            table.Row(
                [Cell.Tick, new(title, 11, true), new(what, 9.5), new(numbers, 10), new(PlanWords.Minutes(steps.Sum(s => s.HandsOnMinutes)), 10),
                    new(wait > 0 ? PlanWords.Minutes(wait) : "", 10), new($"{firstPage + pages[i]}", 11, true)], 6.4);
            if (wait > 0 && !waited && i + 1 < visits.Count)
            {
                waited = true;
                foreach (var block in table.Blocks()) yield return block;
                yield return Block.Space(2);
                yield return Block.Heading("After that", width, 11);
                table = null;
            }
        }

        if (table is null) yield break;
        foreach (var block in table.Blocks()) yield return block;
    }

    /// <summary>Something to buy: how many, what, how large, for which gifts.</summary>
    internal static string Item(PlanFacts facts, ShoppingItem item)
    {
        var size = item.Size.IsZero ? "" : $", {facts.Sizes.Of(item.Size)}";
        var length = item.Length.IsZero ? "" : $", {facts.Sizes.Of(item.Length)} long";
        var why = item.Why.Length == 0 ? "" : $" (for {item.Why})";
        return $"{item.Count} × {item.What}{size}{length}{why}";
    }

    private static IEnumerable<Block> Shopping(PlanFacts facts, double width)
    {
        yield return Block.Space(3);
        yield return Block.Heading("To buy", width);
        if (facts.Plan.Shopping.IsEmpty) yield return Block.Paragraph("Nothing: all is on hand.", width);
        foreach (var item in facts.Plan.Shopping) yield return Block.Tick(Item(facts, item), width, 10.5);

        var used = Consumables.For(facts.Plan, facts.Designs);
        if (used.IsEmpty) yield break;
        yield return Block.Paragraph("Used up: check what is left in the shop", width, 10, bold: true) with { WithNext = true };
        foreach (var text in UsedUp(used)) yield return Block.Tick(text, width, 9.5);
    }

    // All grits on one line, so that the overview stays on its page.
    private static IEnumerable<string> UsedUp(ImmutableArray<Consumable> used)
    {
        foreach (var one in used.Where(c => c.Kind is ConsumableKind.Glue or ConsumableKind.Finish))
            yield return $"{one.What}{(one.Text.Length > 0 ? $", {one.Text}" : ", its label says how much")} ({one.Why})";
        var discs = used.Where(c => c.Kind == ConsumableKind.Abrasive).Select(c => $"{c.Text} × {c.What}").ToArray();
        if (discs.Length > 0) yield return $"discs or sheets: {string.Join(", ", discs)}";
        foreach (var one in used.Where(c => c.Kind == ConsumableKind.Rag)) yield return $"{one.Text} {one.What} ({one.Why})";
    }

    private static IEnumerable<Block> Woods(PlanFacts facts, double width)
    {
        var species = facts.Hatches.Species.ToArray();
        if (species.Length == 0) yield break;
        yield return Block.Space(3);
        yield return Block.Heading("How the woods are drawn", width, 11);
        const int Across = 4;
        foreach (var row in species.Chunk(Across))
        {
            var table = new Table(facts.Hatches, [.. Enumerable.Range(0, Across).Select(_ => new Column("", width / Across))]);
            table.Row([.. row.Select(s => new Cell(s, 10, Kind: CellKind.Swatch)), .. Enumerable.Repeat(Cell.None, Across - row.Length)], 6.4, rule: false);
            foreach (var block in table.Blocks()) yield return block;
        }
    }

    internal static string Count(int count, string noun) => count == 1 ? $"1 {noun}" : $"{count} {noun}s";

    private static string Date(DateOnly? date) => date is { } day ? day.ToString("d MMM yyyy", System.Globalization.CultureInfo.InvariantCulture) : "";
}
