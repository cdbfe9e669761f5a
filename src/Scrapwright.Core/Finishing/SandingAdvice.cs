using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Finishing;

/// <summary>How one gift is sanded.</summary>
public sealed record SandingAdvice
{
    // Where the finish is not known, its last grit is that of most: common practice, no source.
    private const string UsualLastGrit = "P220";

    /// <summary>All that is sanded: faces, edges and ends.</summary>
    public required Area Area { get; init; }

    /// <summary>The grits, or what is missing.</summary>
    public required GritSequence Sequence { get; init; }

    /// <summary>Discs or sheets worn at each grit, rounded up; where a grit is missing, as if it were bought.</summary>
    public required ImmutableArray<(Grit Grit, int Count)> Discs { get; init; }

    /// <summary>What to mind, in short sentences.</summary>
    public required ImmutableArray<string> Cautions { get; init; }

    /// <summary>The sanding of a gift whose faces come from the planer.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="gift">One of its gifts.</param>
    /// <param name="product">What its design gives.</param>
    public static SandingAdvice For(Plan plan, Gift gift, Product product)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(gift);
        ArgumentNullException.ThrowIfNull(product);
        var shop = plan.Request.Shop;
        var (sequence, unknown) = GritsFor(shop, FinishTable.Find(FinishAdvice.KeyFor(gift, shop)));
        var area = PartSurface.Of(product, Operation.Sand);
        var cautions = ImmutableArray.CreateBuilder<string>();
        if (sequence is GritSequence.Gap { Buy.IsEmpty: true }) cautions.Add("No grits stand as close together as the shop asks.");
        else if (sequence is GritSequence.Gap gap) cautions.Add($"Grit to buy first: {string.Join(", ", gap.Buy)}.");
        if (unknown.Length > 0) cautions.Add($"Not known as grits: {string.Join(", ", unknown)}.");
        return new()
        {
            Area = area,
            Sequence = sequence,
            Discs = [.. Grits(sequence).Select(g => (g, Worn(area, shop.Abrasives)))],
            Cautions = cautions.ToImmutable(),
        };
    }

    /// <summary>The grits of a shop from planer marks to a finish, and the marks it has that no standard knows.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="finish">The finish; null for one that is not known.</param>
    public static (GritSequence Sequence, string[] Unknown) GritsFor(Shop shop, Finish? finish)
    {
        ArgumentNullException.ThrowIfNull(shop);
        var marks = shop.Abrasives.Grits.IsDefault ? [] : shop.Abrasives.Grits;
        var onHand = marks.Select(GritTable.Find).OfType<Grit>().ToImmutableArray();
        var last = finish?.LastGrit ?? GritTable.Get(UsualLastGrit);
        return (GritSequence.From(StartingGrit.For(SurfaceFrom.Planer), last, shop.Abrasives.LargestStep, onHand), [.. marks.Where(m => GritTable.Find(m) is null)]);
    }

    /// <summary>The grits of a sequence, those to buy included.</summary>
    internal static ImmutableArray<Grit> Grits(GritSequence sequence) => sequence switch
    {
        GritSequence.Found found => found.Grits,
        GritSequence.Gap gap => gap.Grits,
        _ => [],
    };

    /// <summary>Discs or sheets worn on an area at one grit: at least one where something is sanded, at most a million (our own choice, as is the slip allowed to the arithmetic).</summary>
    internal static int Worn(Area area, Abrasives abrasives) => area <= Area.Zero ? 0
        : abrasives.WearsAfterCm2 <= 0 ? 1
        : (int)Math.Ceiling(Math.Min(area.SquareMillimetres / 100 / abrasives.WearsAfterCm2, 1e6) - 1e-9);
}
