using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <content>Two gifts that share a glue-up.</content>
internal sealed partial class PricedPlacement
{
    /// <summary>
    /// A gift placed together with one that shares a glue-up with it, where both together cost less than each on its own, or where one of them finds no wood on its own;
    /// null when there is none. The cheapest of its partners is taken.
    /// </summary>
    /// <param name="gift">The gift.</param>
    /// <param name="alone">How it is placed on its own; null when it cannot be.</param>
    /// <param name="pile">What is left of the pile.</param>
    /// <param name="looks">The gifts placed already.</param>
    /// <param name="open">Gifts that are still to be placed.</param>
    private ((OpenPile Pile, List<int> Panels, List<Segment> Segments) Placed, int Partner)? PlaceWithPartner(
        GiftDemand gift, (OpenPile Pile, List<int> Panels, List<Segment> Segments)? alone, OpenPile pile, CircleLooks looks, List<int> open)
    {
        ((OpenPile Pile, List<int> Panels, List<Segment> Segments) Placed, int Partner)? best = null;
        var most = 0.0;
        foreach (var shared in problem.SharedOf[gift.Index].GroupBy(p => p.Shares.First(s => s.GiftIndex != gift.Index).GiftIndex).Where(g => open.Contains(g.Key)))
        {
            var other = problem.Gifts[shared.Key];
            var apart = alone is { } mine && PlaceUnlike(other, mine.Pile, looks) is { } theirs ? CostOf(mine.Segments) + CostOf(theirs.Segments) : double.PositiveInfinity;
            foreach (var panel in shared)
            {
                if (PlaceTogether(gift, other, panel, pile, looks) is { } placed && apart - CostOf(placed.Segments) is > 0 and var saved && (best is null || saved > most))
                {
                    (best, most) = ((placed, other.Index), saved);
                }
            }
        }

        return best;
    }

    private (OpenPile Pile, List<int> Panels, List<Segment> Segments)? PlaceTogether(GiftDemand one, GiftDemand other, PanelCandidate shared, OpenPile pile, CircleLooks looks)
    {
        avoided = "";
        favoursPins = false;
        var trial = pile.Copy();
        if (Fill(shared.Index, trial) is not { } filling)
        {
            return null;
        }

        List<Segment> segments = [.. filling.Strips.Select(s => s.Segment with { Panel = shared.Index })];
        filling.Strips.ToList().ForEach(trial.Take);
        List<int> panels = [shared.Index];
        foreach (var gift in new[] { one, other })
        {
            if (PlaceGift(gift, trial, shared.Shares.First(s => s.GiftIndex == gift.Index).Part.Key) is not { } rest)
            {
                return null;
            }

            panels.AddRange(rest.Panels);
            segments.AddRange(rest.Segments);
        }

        return new[] { one, other }.All(gift => problem.KeepsPins(gift.Index, segments)
            && !looks.HasLike(gift, SpeciesOf(segments.Where(s => s.GiftsIn(problem).Contains(gift.Index)))))
                ? (trial, panels, segments)
                : null;
    }

    /// <summary>What segments cost: their wood, and what their places are worth to others.</summary>
    private double CostOf(IEnumerable<Segment> segments) => segments.Sum(s =>
        PlacementValues.Wood(problem, s) + (prices[problem.PlaceOf(s)] * problem.MarksOf(s.NeededIn(problem))));
}
