using System.Collections.Immutable;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>The part of a problem that is searched anew: some gifts, and the wood they may take. All else stays as a placement has it.</summary>
internal sealed class Scope
{
    private readonly Problem problem;
    private readonly OpenPile pile;
    private readonly HashSet<int>? offcuts;

    private Scope(Problem problem, ImmutableArray<int> gifts, Placement? rest, HashSet<int>? offcuts)
    {
        this.problem = problem;
        this.offcuts = offcuts;
        Gifts = gifts;
        Rest = rest;
        pile = new OpenPile(problem);
        foreach (var segment in rest?.Segments ?? [])
        {
            pile.Take(segment);
        }
    }

    /// <summary>Places of the gifts that are searched anew, in order.</summary>
    internal ImmutableArray<int> Gifts { get; }

    /// <summary>What stays, without the gifts that are searched anew; null when nothing does.</summary>
    internal Placement? Rest { get; }

    /// <summary>Everything.</summary>
    internal static Scope All(Problem problem) => new(
        problem, [.. Enumerable.Range(0, problem.Gifts.Length)], problem.DoneSegments.IsEmpty ? null : Placement.Done(problem), null);

    /// <summary>Some gifts of a placement, with the given untouched offcuts, those the gifts have now, and what the other gifts leave of theirs.</summary>
    internal static Scope Of(Problem problem, Placement placement, IEnumerable<int> gifts, IEnumerable<int> untouched)
    {
        var free = placement.WithPartners(problem, gifts);
        var rest = placement.Without(problem, free);
        var now = placement.Segments.Where(s => free.Contains(s.GiftIn(problem))).Select(s => problem.Patterns[s.Pattern].OffcutIndex);
        return new(problem, free, rest, [.. untouched, .. now, .. rest.Segments.Select(s => problem.Patterns[s.Pattern].OffcutIndex)]);
    }

    /// <summary>True when the segment is open to the search.</summary>
    internal bool Allows(SegmentOption option) =>
        (offcuts is null || offcuts.Contains(problem.Patterns[option.Segment.Pattern].OffcutIndex)) && pile.HasRoom(option);

    /// <summary>How many segments the search has to decide on.</summary>
    internal long SegmentCount(SegmentOptions options) => Gifts.Sum(gift =>
        problem.Panels.Where(p => p.GiftIndex == gift && p.Shares.All(s => Gifts.Contains(s.GiftIndex))).Sum(p => (long)options.ForPanel(p.Index).Count(Allows))
        + problem.Runs.Where(r => r.GiftIndex == gift).Sum(r => (long)options.ForSolid(r.Index).Count(Allows)));

    /// <summary>Room left at a place, one kerf included, on the grid of lengths.</summary>
    internal long RoomAt(int place) => problem.Rooms[place] - pile.TakenAt(place);

    /// <summary>True when the rest has the offcut milled and ripped in that way already.</summary>
    internal bool IsSettled(int pattern) => pile.PatternOf(problem.Patterns[pattern].OffcutIndex) == pattern;

    /// <summary>The whole placement, when this is what the search found for its part.</summary>
    internal Placement Whole(Placement part)
    {
        if (Rest is null)
        {
            return part;
        }

        var whole = new Placement(
            [.. part.Made.Select((made, gift) => Gifts.Contains(gift) ? made : Rest.Made[gift])],
            [.. Rest.Panels.Concat(part.Panels).Order()],
            [.. Rest.Segments, .. part.Segments],
            []);
        return whole with { Values = PlacementValues.Of(problem, whole) };
    }
}
