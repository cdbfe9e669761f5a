using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Finishing;

/// <summary>How one gift is finished: how much, in which steps, what to mind.</summary>
public sealed record FinishAdvice
{
    /// <summary>What stays in rag, brush and tin on top of what stays on the wood. [1]; estimate.</summary>
    public const double WasteFactor = 1.2;

    /// <summary>Key of the finish: the gift's, or the shop's where it names none.</summary>
    public required string Key { get; init; }

    /// <summary>The finish; null when the table does not know the key: figures that hang on it are empty.</summary>
    public required Finish? Finish { get; init; }

    /// <summary>All that is finished: faces, edges, ends, rods.</summary>
    public required Area Area { get; init; }

    /// <summary>Finish for all coats, waste included. [ml]</summary>
    public required Band? Millilitres { get; init; }

    /// <summary>The steps, coat by coat.</summary>
    public required ImmutableArray<FinishStep> Steps { get; init; }

    /// <summary>What to mind; with a drying oil, and with a finish that is not known, oily rags first.</summary>
    public required ImmutableArray<string> Cautions { get; init; }

    /// <summary>The advice in a few short lines in the maker's units, cautions left out.</summary>
    public required ImmutableArray<AdviceFact> Facts { get; init; }

    /// <summary>The finishing of a gift.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="gift">One of its gifts.</param>
    /// <param name="product">What its design gives.</param>
    /// <param name="month">1 to 12 to check the temperature of the shop's climate in that month; null for none.</param>
    public static FinishAdvice For(Plan plan, Gift gift, Product product, int? month = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(gift);
        ArgumentNullException.ThrowIfNull(product);
        var shop = plan.Request.Shop;
        var key = KeyFor(gift, shop);
        var finish = FinishTable.Find(key);
        var area = PartSurface.Of(product, Operation.Finish);
        Band? millilitres = finish is null ? null : Needed(finish, area);
        return new()
        {
            Key = key,
            Finish = finish,
            Area = area,
            Millilitres = millilitres,
            Steps = finish is null ? [] : FinishSteps.For(finish),
            Cautions = [.. FinishWords.Cautions(key, finish, ShopAir.Celsius(shop, month), shop.Unit)],
            Facts = [.. FinishWords.Facts(key, finish, area, millilitres, shop.Unit)],
        };
    }

    /// <summary>Key of a gift's finish.</summary>
    public static string KeyFor(Gift gift, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(gift);
        ArgumentNullException.ThrowIfNull(shop);
        return (gift.Finish.Length > 0 ? gift.Finish : shop.Finish).Trim();
    }

    /// <summary>Finish for an area, all coats, waste included. [ml], whole fives</summary>
    internal static Band Needed(Finish finish, Area area)
    {
        // Definition: 10⁶ mm² a square metre. Beyond a hectare nothing is counted, and steps are of five: our own choice.
        var metres2 = Math.Min(area.SquareMillimetres / 1e6, 1e4) * finish.Coats * WasteFactor * 1000;
        // Our own choice, as above.
        return Band.Around(metres2 / finish.CoverageM2PerLitre.Most, metres2 / finish.CoverageM2PerLitre.Least, 5);
    }
}
