using System.Collections.Immutable;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files;

/// <summary>What the values of a gift must keep to, in a file as on a screen. Its design and options are for the design to judge.</summary>
public static class GiftRules
{
    /// <summary>Most characters of a label.</summary>
    public const int LongestLabel = 24;

    private const int LongestName = 80;

    /// <summary>Every value that breaks a rule, by its name; empty when the gift can be kept.</summary>
    /// <param name="gift">The gift.</param>
    /// <param name="shop">The shop, which names climates of its own.</param>
    public static ImmutableArray<ValueProblem> Check(Gift gift, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(gift);
        ArgumentNullException.ThrowIfNull(shop);
        var checks = new ValueChecks();
        checks.Require(!string.IsNullOrWhiteSpace(gift.Label) && gift.Label.Length <= LongestLabel, "label", gift.Label, FileMessages.AGiftName);
        checks.Text("label", gift.Label, int.MaxValue);
        checks.Text("recipient", gift.Recipient, LongestName);
        checks.Text("circle", gift.Circle, LongestName);
        checks.Text("occasion", gift.Occasion, OccasionRules.LongestName);
        checks.Require(gift.Priority is >= 1 and <= 9, "priority", $"{gift.Priority}", FileMessages.APriority);
        checks.Require(gift.Climate.Length == 0 || AirRules.IsKnown(shop, gift.Climate), "climate", gift.Climate, AirRules.Expected(shop, gift.Climate));
        checks.Require(gift.Finish.Length == 0 || FinishTable.Find(gift.Finish) is not null, "finish", gift.Finish, ShopRules.ExpectedFinish(gift.Finish));
        checks.Texts("options", gift.Options);
        return checks.Problems;
    }

    /// <summary>Gifts whose occasion a new list no longer has; each with its label in the expected text.</summary>
    /// <param name="gifts">The gifts.</param>
    /// <param name="occasions">The occasions as they would be.</param>
    public static ImmutableArray<ValueProblem> CheckOccasions(IEnumerable<Gift> gifts, ImmutableArray<Occasion> occasions)
    {
        ArgumentNullException.ThrowIfNull(gifts);
        return
        [
            .. gifts.Where(gift => gift.Occasion.Length > 0 && !occasions.Any(occasion => GiftYears.IsSame(occasion.Name, gift.Occasion)))
                .Select(gift => new ValueProblem("occasion", $"no “{gift.Occasion}”", $"the occasion that gift {gift.Label} is for")),
        ];
    }

    /// <summary>Gifts whose climate a new shop no longer has; each with its label before the problem's found text.</summary>
    /// <param name="gifts">The gifts.</param>
    /// <param name="shop">The shop as it would be.</param>
    public static ImmutableArray<ValueProblem> CheckClimates(IEnumerable<Gift> gifts, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(gifts);
        ArgumentNullException.ThrowIfNull(shop);
        return
        [
            .. gifts.Where(gift => gift.Climate.Length > 0 && !AirRules.IsKnown(shop, gift.Climate))
                .Select(gift => new ValueProblem("ownClimates", $"no “{gift.Climate}”", $"the climate where gift {gift.Label} will live")),
        ];
    }
}
