using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Problems;

/// <summary>
/// Glue-ups that serve two gifts at once: parts alike in size and looks from one panel, for one load of clamps and one pair of ends. Gifts of one circle do not share:
/// they would look the same.
/// </summary>
internal static class SharedPanels
{
    /// <summary>Each gift may share with so many of those that come next with a part alike.</summary>
    private const int MostPartners = 2;

    private const int MostLayers = 2;

    /// <summary>Sets that need more pieces together fill a load of clamps each; allowed to share as well, they would only make the bounds weak.</summary>
    private const int MostPieces = 6;

    /// <summary>Every glue-up of two gifts that is worth a thought, with the copies each still needs.</summary>
    /// <param name="gifts">The gifts.</param>
    /// <param name="margins">What each gift holds in hand, in their order.</param>
    /// <param name="done">What is glued already.</param>
    /// <param name="longest">Longest clear stretch of the pile: a longer panel cannot be made.</param>
    /// <param name="shop">The shop.</param>
    internal static IEnumerable<(ImmutableArray<PanelShare> Shares, PanelNeeds Needs)> Of(
        IReadOnlyList<GiftDemand> gifts, GiftMargins[] margins, DoneWork done, Length longest, Shop shop)
    {
        var open =
            from gift in gifts
            from part in gift.Product.Parts
            where part is { Kind: PartKind.Panel } && part.Wish?.Panels != SetPanels.Each
            let count = done.StillNeeded(gift.Gift.Label, part)
            where count > 0
            select new PanelShare(gift.Index, part, count);
        foreach (var alike in open.GroupBy(s => (s.Part.Length, s.Part.Width, s.Part.Thickness)))
        {
            var shares = alike.ToList();
            for (var i = 0; i < shares.Count; i++)
            {
                foreach (var other in shares.Skip(i + 1).Where(o => shares[i].Count + o.Count <= MostPieces && MayShare(gifts, shares[i], o)).Take(MostPartners))
                {
                    var count = shares[i].Count + other.Count;
                    for (var layers = 1; layers <= MostLayers; layers++)
                    {
                        var needs = new PanelNeeds(shares[i].Part, (count + layers - 1) / layers, layers, shop) { Margins = InHand([shares[i], other], margins, layers) };
                        if (needs.Overlap <= longest)
                        {
                            yield return ([shares[i], other], needs);
                        }
                    }
                }
            }
        }
    }

    /// <summary>What a glue-up holds in hand, so that it suffices for each gift it serves.</summary>
    internal static SizeMargins InHand(IEnumerable<PanelShare> shares, GiftMargins[] margins, int layers) =>
        shares.Select(s => margins[s.GiftIndex].OfPanel(s.Part.Key, s.Count, layers)).Aggregate((one, other) => one.Or(other));

    private static bool MayShare(IReadOnlyList<GiftDemand> gifts, PanelShare one, PanelShare other)
    {
        var (first, second) = (gifts[one.GiftIndex].Gift, gifts[other.GiftIndex].Gift);
        return one.GiftIndex != other.GiftIndex
            && (first.Circle.Length == 0 || !string.Equals(first.Circle, second.Circle, StringComparison.OrdinalIgnoreCase))
            && (one.Part.Wish is { } wish ? other.Part.Wish is { } theirs && wish.IsLike(theirs) : other.Part.Wish is null);
    }
}
