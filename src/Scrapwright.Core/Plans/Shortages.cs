using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans;

/// <summary>Says of a gift that is not made what is missing, from the wood that is left over.</summary>
public static class Shortages
{
    /// <summary>
    /// Why the gift is not made; never empty. Wrong options come alone, then limits of the shop, then pins that no plan can keep, else what each part lacks.
    /// When the leftovers would do for this gift alone, the one reason is <see cref="Reason.OutOfTime"/>.
    /// </summary>
    /// <param name="gift">The gift and what came of its design.</param>
    /// <param name="leftovers">What the plan leaves; only what goes back to the pile counts.</param>
    /// <param name="request">The facts of the plan.</param>
    /// <remarks>
    /// Strips are counted as if all strips of one glue-up had the same width, in every number of strips and blanks the part allows; the way
    /// that lacks fewest is told, in sizes rounded up to a mark of the rule. Every leftover serves one part only. So what is told suffices, and less may do.
    /// </remarks>
    public static ImmutableArray<Reason> For(GiftDesign gift, ImmutableArray<Leftover> leftovers, PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(gift);
        ArgumentNullException.ThrowIfNull(request);
        return gift.Outcome switch
        {
            DesignOutcome.Refused refused => [.. refused.Problems.Select(p => new Reason.WrongOption(p.Option, p.Found, p.Expected))],
            DesignOutcome.Derived derived => For(gift.Gift.Label, derived.Product, leftovers.IsDefault ? [] : leftovers, request),
            _ => [new Reason.OutOfTime()],
        };
    }

    private static ImmutableArray<Reason> For(string gift, Product product, ImmutableArray<Leftover> leftovers, PlanRequest request)
    {
        var shop = request.Shop;
        var margins = GiftMargins.Of(product, shop);
        var done = DoneWork.Of(request);
        var panels = product.Parts.Where(p => p is { Kind: PartKind.Panel, Wish: not null } && done.StillNeeded(gift, p) > 0)
            .Select(p => new PanelShortage(p with { Count = done.StillNeeded(gift, p) }, margins, shop)).ToArray();
        var runs = product.Runs.Where(r => !r.Members.IsEmpty && !done.IsCut(gift, r.Mark)).Select(r => new SolidNeeds(r, product.Parts, shop) { Margins = margins.OfBoard(r.Mark) }).ToArray();
        ImmutableArray<Reason> beyond =
        [
            .. panels.Select(p => p.FindLimit()).OfType<Reason>(),
            .. runs.Select(r => FindLimit(r, shop)).OfType<Reason>(),
        ];
        if (!beyond.IsEmpty)
        {
            return beyond;
        }

        var pins = request.Choices.PinsOf(gift);
        ImmutableArray<Reason> unkept = [.. pins.Select(p => PinShortage.Find(p, product, request)).OfType<Reason>()];
        if (!unkept.IsEmpty)
        {
            return unkept;
        }

        var wood = SpareWood.From(leftovers, request, done);
        ImmutableArray<Reason> missing =
        [
            .. runs.Select(r => FindBoard(r, wood, shop)).OfType<Reason>(),
            .. panels.Select(p => p.FindMissing(wood)).OfType<Reason>(),
        ];
        return !missing.IsEmpty ? missing
            : pins.IsEmpty ? [new Reason.OutOfTime()]
            : [.. pins.Select(p => new Reason.Pinned(p.Part, p.Offcut, PinFault.NoWayFound, Length.Zero, Length.Zero))];
    }

    private static Reason.BeyondShop? FindLimit(SolidNeeds needs, Shop shop)
    {
        foreach (var operation in (ReadOnlySpan<Operation>)[Operation.PlaneToThickness, Operation.TrimWidth, Operation.CrosscutBlanks])
        {
            if (StationRules.Rule(operation, needs.Length, needs.PartWidth, needs.PlanedThickness, shop) is StationRuling.Refused refused)
            {
                return new Reason.BeyondShop(needs.Run.Members[0].Part, refused.Limit, refused.Found, refused.Expected);
            }
        }

        return null;
    }

    private static Reason.MissingBoard? FindBoard(SolidNeeds needs, List<SpareWood> wood, Shop shop)
    {
        var board = wood
            .Where(w => w.Count(needs.Length, needs.RoughWidth, needs.StripThickness, shop) > 0)
            .OrderBy(w => w.Bulk).FirstOrDefault();
        if (board is not null)
        {
            wood.Remove(board);
            return null;
        }

        return new Reason.MissingBoard(
            needs.Run.Mark,
            needs.RoughWidth,
            ReadableSize.Up(needs.Length, shop.Unit),
            SpareWood.RoughThickness(needs.StripThickness, shop));
    }
}
