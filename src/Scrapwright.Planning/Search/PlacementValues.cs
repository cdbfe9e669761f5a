using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Plans;
using Scrapwright.Planning.Building;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>Values of a placement on every level, worked out without the solver, and the bounds that need no search.</summary>
internal static class PlacementValues
{
    internal static ImmutableArray<(LevelKind Kind, long Value)> Of(Problem problem, Placement placement) =>
    [
        (LevelKind.GiftsMade, problem.Gifts.Where(g => placement.Made[g.Index]).Sum(g => g.Weight)),
        (LevelKind.Looks, Looks(problem, placement)),
        (LevelKind.WoodUsed, placement.Segments.Sum(s => Wood(problem, s))),
        (LevelKind.ClampLoads, placement.Panels.Length + BoardsGlued(problem, placement.Segments)),
        .. problem.Before.IsEmpty ? [] : new[] { (LevelKind.StripsAsBefore, StripsAsBefore.Count(problem, placement)) },
    ];

    /// <summary>What no plan can beat: every gift, every point, no wood, no glue-up.</summary>
    internal static long TrivialBound(Problem problem, LevelKind kind) => kind switch
    {
        LevelKind.GiftsMade => problem.Gifts.Sum(g => g.Weight),
        LevelKind.Looks => CirclePairs(problem).Count() + problem.Gifts.Sum(g => g.Product.Parts.Sum(p => Wished(p).Count() + (IsEarned(p) ? 1 : 0) + (IsEachDifferent(p) ? p.Count * (p.Count - 1) / 2 : 0))),
        LevelKind.StripsAsBefore => StripsAsBefore.Most(problem),
        _ => 0,
    };

    internal static long Wood(Problem problem, Segment segment)
    {
        var pattern = problem.Patterns[segment.Pattern];
        return WoodVolume.CeilingMm3(segment.NeededIn(problem), pattern.Lanes[segment.Lane].RoughWidth, pattern.RoughThickness, pattern.Layers);
    }

    /// <summary>How many boards are glued face to face for the segments.</summary>
    internal static int BoardsGlued(Problem problem, IEnumerable<Segment> segments) =>
        segments.Where(s => problem.Patterns[s.Pattern].Facing is not null).Select(s => s.Pattern).Distinct().Count();

    /// <summary>Points for looks that each gift lacks: what to plan anew when looks shall get better.</summary>
    internal static long[] LackingLooks(Problem problem, Placement placement)
    {
        var lacking = new long[problem.Gifts.Length];
        var segmentsOf = SegmentsByGift(problem, placement);
        var speciesOf = SpeciesByGift(problem, segmentsOf);
        foreach (var pair in CirclePairs(problem).Where(pair => !Differs(placement, speciesOf, pair)))
        {
            lacking[pair.One.Index]++;
            lacking[pair.Other.Index]++;
        }

        foreach (var gift in problem.Gifts)
        {
            foreach (var part in gift.Product.Parts)
            {
                lacking[gift.Index] += Wished(part).Count() - WishPoints(problem, segmentsOf[gift.Index], gift, part)
                    + (IsEarned(part) && !HasPatternPoint(problem, placement, gift, part) ? 1 : 0)
                    + (IsEachDifferent(part) ? (part.Count * (part.Count - 1) / 2) - PiecesThatDiffer(problem, placement, gift, part) : 0);
            }
        }

        return lacking;
    }

    private static long Looks(Problem problem, Placement placement)
    {
        var segmentsOf = SegmentsByGift(problem, placement);
        var speciesOf = SpeciesByGift(problem, segmentsOf);
        return CirclePairs(problem).Count(pair => Differs(placement, speciesOf, pair))
            + problem.Gifts.Where(gift => placement.Made[gift.Index]).Sum(gift => gift.Product.Parts.Sum(part =>
                WishPoints(problem, segmentsOf[gift.Index], gift, part) + (HasPatternPoint(problem, placement, gift, part) ? 1L : 0)
                + PiecesThatDiffer(problem, placement, gift, part)));
    }

    private static ILookup<int, Segment> SegmentsByGift(Problem problem, Placement placement) =>
        placement.Segments.SelectMany(s => s.GiftsIn(problem).Select(gift => (Gift: gift, Segment: s))).ToLookup(x => x.Gift, x => x.Segment);

    private static List<HashSet<string>> SpeciesByGift(Problem problem, ILookup<int, Segment> segmentsOf) =>
        [.. problem.Gifts.Select(g => segmentsOf[g.Index].Select(s => problem.Patterns[s.Pattern].Offcut.Species).ToHashSet())];

    private static bool Differs(Placement placement, List<HashSet<string>> speciesOf, (GiftDemand One, GiftDemand Other) pair) =>
        placement.Made[pair.One.Index] && placement.Made[pair.Other.Index]
        && (pair.One.Product.Family != pair.Other.Product.Family || !speciesOf[pair.One.Index].SetEquals(speciesOf[pair.Other.Index]));

    private static long WishPoints(Problem problem, IEnumerable<Segment> segments, GiftDemand gift, Part part)
    {
        if (!Wished(part).Any())
        {
            return 0;
        }

        var there = segments.Where(s => Serves(problem, s, gift.Index, part)).Select(s => problem.Patterns[s.Pattern].Offcut.Species).ToHashSet();
        var met = Wished(part).Count(there.Contains);
        return met - (there.Count - met);
    }

    private static bool HasPatternPoint(Problem problem, Placement placement, GiftDemand gift, Part part) =>
        IsEarned(part) && placement.Made[gift.Index]
        && placement.Panels.Where(p => problem.Panels[p].IsFor(gift.Index, part.Key)).All(p => MakesPattern(problem, placement, p));

    /// <summary>Of a set whose pieces shall each be different, how many pairs of panels do not have the same woods.</summary>
    private static int PiecesThatDiffer(Problem problem, Placement placement, GiftDemand gift, Part part)
    {
        if (!IsEachDifferent(part) || !placement.Made[gift.Index])
        {
            return 0;
        }

        var woods = placement.Panels.Where(p => problem.Panels[p].IsFor(gift.Index, part.Key))
            .Select(p => placement.Segments.Where(s => s.Panel == p).Select(s => problem.Patterns[s.Pattern].Offcut.Species).ToHashSet()).ToList();
        return woods.Select((one, i) => woods.Skip(i + 1).Count(other => !one.SetEquals(other))).Sum();
    }

    /// <summary>True for a part whose pieces come each from a panel of its own, to be different.</summary>
    internal static bool IsEachDifferent(Part part) => part is { Kind: PartKind.Panel, Count: > 1, Wish.Panels: SetPanels.Each };

    private static bool IsEarned(Part part) => part.Wish is { } wish && StripPatterns.IsEarned(wish.Pattern);

    internal static bool MakesPattern(Problem problem, Placement placement, int panel)
    {
        var candidate = problem.Panels[panel];
        ImmutableArray<Segment> strips = [.. placement.Segments.Where(s => s.Panel == panel)];
        if (candidate.IsBookMatchWished)
        {
            return candidate.Done is { } done ? StripPatterns.IsBookMatched(Sisters.PlacesOf(done.Strips)) : new PanelStrips(problem, candidate, strips).AreBookMatched;
        }

        return StripPatterns.IsMet(
            candidate.Wish.Pattern,
            strips.Select(s => (problem.Patterns[s.Pattern].Offcut.Species, problem.Patterns[s.Pattern].Lanes[s.Lane].NetWidth)),
            candidate.Part.Width);
    }

    private static IEnumerable<(GiftDemand One, GiftDemand Other)> CirclePairs(Problem problem) =>
        from circle in problem.Gifts.Where(g => g.Gift.Circle.Length > 0).GroupBy(g => g.Gift.Circle, StringComparer.OrdinalIgnoreCase)
        from one in circle
        from other in circle
        where one.Index < other.Index
        select (one, other);

    private static IEnumerable<string> Wished(Part part) => (part.Wish?.Species ?? part.Species).Distinct();

    internal static bool Serves(Problem problem, Segment segment, int gift, Part part) => segment.Panel >= 0
        ? problem.Panels[segment.Panel].IsFor(gift, part.Key)
        : problem.Runs[segment.Solid].GiftIndex == gift && problem.Runs[segment.Solid].Runs.Any(r => r.Members.Any(m => m.Part == part.Key));
}
