using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Finishing;

/// <summary>What a plan uses up besides wood: glue, finish, abrasives, rags. Shown after what it has to buy; some of it is in the shop already.</summary>
public static class Consumables
{
    // One rag to put on and one to wipe off, for each coat and half a square metre: estimate.
    private const int RagsEachCoat = 2;
    private const double RagCoversSquareMillimetres = 500_000;

    /// <summary>The list: glue, finishes, abrasives from coarse to fine, rags.</summary>
    public static ImmutableArray<Consumable> For(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return For(plan, plan.Request.DeriveDesigns());
    }

    /// <summary>The list when what came of the designs is known already.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="designs">What came of every gift's design.</param>
    public static ImmutableArray<Consumable> For(Plan plan, ImmutableArray<GiftDesign> designs)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var shop = plan.Request.Shop;
        var labels = plan.Made.Select(m => m.Gift).ToHashSet(StringComparer.Ordinal);
        var made = designs
            .Select(d => (d.Gift, (d.Outcome as DesignOutcome.Derived)?.Product))
            .Where(d => d.Product is not null && labels.Contains(d.Gift.Label))
            .Select(d => (d.Gift, Product: d.Product!)).ToArray();
        return [.. Glue(plan, made), .. Finishes(shop, made), .. Discs(shop, made), .. Rags(shop, made)];
    }

    private static IEnumerable<Consumable> Glue(Plan plan, (Gift Gift, Product Product)[] made)
    {
        var shop = plan.Request.Shop;
        var lines = Area.Sum(plan.GlueUps.Select(g => Area.Of(g.Overlap, g.ThicknessLadder.Start) * Math.Max(0, g.Strips.Length - 1)));
        var assembled = made.Where(m => PartSurface.Glued(m.Product) > Area.Zero).ToArray();
        var faces = Area.Sum(plan.Faced.Select(FaceGlueAdvice.GlueArea));
        var area = lines + faces + Area.Sum(assembled.Select(m => PartSurface.Glued(m.Product)));
        if (area <= Area.Zero) yield break;
        var glue = GlueTable.Find(shop.Glue);
        // Definition: 10⁶ mm² a square metre.
        Band? grams = glue is null ? null : GlueUpAdviser.Spread(glue, area.SquareMillimetres / 1e6);
        string[] why =
        [
            .. lines > Area.Zero ? [$"{plan.GlueUps.Length} {(plan.GlueUps.Length == 1 ? "glue-up" : "glue-ups")}"] : Array.Empty<string>(),
            .. faces > Area.Zero ? [$"{plan.Faced.Length} {(plan.Faced.Length == 1 ? "board" : "boards")} face to face"] : Array.Empty<string>(),
            .. assembled.Length > 0 ? [$"assembling {Labels(assembled)}"] : Array.Empty<string>(),
        ];
        yield return new(
            ConsumableKind.Glue, glue?.Name ?? $"glue “{shop.Glue}”", grams, grams is { } g ? Amounts.Grams(g, shop.Unit) : "",
            $"{string.Join(", ", why)}: {Amounts.Area(area, shop.Unit)}");
    }

    private static IEnumerable<Consumable> Finishes(Shop shop, (Gift Gift, Product Product)[] made)
    {
        foreach (var (key, area, gifts) in ByFinish(shop, made, Operation.Finish))
        {
            var finish = FinishTable.Find(key);
            Band? millilitres = finish is null ? null : FinishAdvice.Needed(finish, area);
            yield return new(
                ConsumableKind.Finish, finish?.Name ?? $"finish “{key}”", millilitres, millilitres is { } ml ? Amounts.Millilitres(ml, shop.Unit) : "",
                $"{Labels(gifts)}: {(finish is null ? "" : $"{finish.Coats} coats on ")}{Amounts.Area(area, shop.Unit)}");
        }
    }

    private static IEnumerable<Consumable> Discs(Shop shop, (Gift Gift, Product Product)[] made)
    {
        var areas = new Dictionary<Grit, Area>();
        foreach (var (key, area, _) in ByFinish(shop, made, Operation.Sand))
        {
            foreach (var grit in SandingAdvice.Grits(SandingAdvice.GritsFor(shop, FinishTable.Find(key)).Sequence))
                areas[grit] = areas.GetValueOrDefault(grit) + area;
        }

        foreach (var (grit, area) in areas.OrderByDescending(a => a.Key.ParticleMicrometres))
        {
            var count = SandingAdvice.Worn(area, shop.Abrasives);
            yield return new(ConsumableKind.Abrasive, grit.Mark, new Band(count, count), $"{count}", $"{Amounts.Area(area, shop.Unit)} to sand");
        }
    }

    private static IEnumerable<Consumable> Rags(Shop shop, (Gift Gift, Product Product)[] made)
    {
        var count = 0;
        var wiped = new List<(Gift, Product)>();
        foreach (var (key, area, gifts) in ByFinish(shop, made, Operation.Finish))
        {
            if (FinishTable.Find(key) is not { } finish || finish.Method == FinishMethod.Brush) continue;
            // Our own choice: ten thousand rags are enough to count to.
            count += (int)Math.Ceiling(Math.Min(area.SquareMillimetres / RagCoversSquareMillimetres, 1e4)) * RagsEachCoat * finish.Coats;
            wiped.AddRange(gifts);
        }

        if (count > 0) yield return new(ConsumableKind.Rag, "rags of cotton, no lint", new Band(count, count), $"{count}", $"finishing {Labels(wiped)}");
    }

    // Gifts that have a step of the kind, by their finish, with the area it works on.
    private static IEnumerable<(string Key, Area Area, (Gift Gift, Product Product)[] Gifts)> ByFinish(
        Shop shop, (Gift Gift, Product Product)[] made, Operation operation) =>
        from one in made
        let area = PartSurface.Of(one.Product, operation)
        where area > Area.Zero
        group (one, area) by FinishAdvice.KeyFor(one.Gift, shop).ToLowerInvariant() into gifts
        select (FinishAdvice.KeyFor(gifts.First().one.Gift, shop), Area.Sum(gifts.Select(g => g.area)), gifts.Select(g => g.one).ToArray());

    private static string Labels(IEnumerable<(Gift Gift, Product Product)> gifts) => string.Join(", ", gifts.Select(m => m.Gift.Label));
}
