using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Problems;

/// <summary>A request worked out into offcuts with their patterns, glue-ups that may be made and runs of solid parts.</summary>
internal sealed record Problem
{
    private Grid? lengths;
    private ILookup<int, PanelCandidate>? sharedOf;
    private ImmutableArray<int> firstPlaces;
    private ImmutableArray<long> rooms;

    internal required PlanRequest Request { get; init; }

    /// <summary>The single offcuts of the pile, then the boards that may be glued face to face from two of them.</summary>
    internal required ImmutableArray<Offcut> Offcuts { get; init; }

    /// <summary>Place of the first board among the offcuts.</summary>
    internal required int FirstBoard { get; init; }

    internal required ImmutableArray<OffcutPattern> Patterns { get; init; }

    internal required ImmutableArray<GiftDesign> Designs { get; init; }

    internal required ImmutableArray<GiftDemand> Gifts { get; init; }

    internal required ImmutableArray<PanelCandidate> Panels { get; init; }

    internal required ImmutableArray<RunDemand> Runs { get; init; }

    /// <summary>What is glued and cut already, in the workshop as it is.</summary>
    internal required DoneWork Done { get; init; }

    /// <summary>The segments of what is done; their glue-ups and runs stand in the lists with the others.</summary>
    internal ImmutableArray<Search.Segment> DoneSegments { get; init; } = [];

    /// <summary>Pins that what is done does not keep already.</summary>
    internal ImmutableArray<PinDemand> Pins { get; init; } = [];

    /// <summary>Strips of the plan before; empty when there is none.</summary>
    internal ImmutableArray<FormerStrip> Before { get; init; } = [];

    /// <summary>The plan before; null when there is none.</summary>
    internal Plan? Former { get; init; }

    /// <summary>The levels in order.</summary>
    internal ImmutableArray<LevelKind> Levels => Before.IsEmpty
        ? [LevelKind.GiftsMade, LevelKind.Looks, LevelKind.WoodUsed, LevelKind.ClampLoads]
        : [LevelKind.GiftsMade, LevelKind.Looks, LevelKind.WoodUsed, LevelKind.ClampLoads, LevelKind.StripsAsBefore];

    /// <summary>Places of the glue-ups that are glued.</summary>
    internal IEnumerable<int> DonePanels => Panels.Where(p => p.Done is not null).Select(p => p.Index);

    internal Shop Shop => Request.Shop;

    /// <summary>Grid on which every length along the grain is exact where that can be.</summary>
    internal Grid Lengths => lengths ??= Grid.For(
    [
        Shop.TableSaw.Kerf, .. Patterns.SelectMany(p => p.Runs).Select(r => r.Length), .. Panels.Select(p => p.Needs.Overlap), .. Runs.Select(r => r.Needs.Length),
    ]);

    /// <summary>What a length takes of a place with one kerf, on the grid of lengths, rounded up.</summary>
    internal long MarksOf(Length needed) => Lengths.Up(needed) + Lengths.Up(Shop.TableSaw.Kerf);

    /// <summary>Glue-ups that each gift may share and that are not glued yet, by place of the gift.</summary>
    internal ILookup<int, PanelCandidate> SharedOf => sharedOf ??= Panels.Where(p => p.IsShared && p.Done is null)
        .SelectMany(p => p.Shares.Select(s => (s.GiftIndex, Panel: p))).ToLookup(x => x.GiftIndex, x => x.Panel);

    /// <summary>Room of every place with one kerf, on the grid of lengths, rounded down: what the segments there and a kerf for each may add up to.</summary>
    internal ImmutableArray<long> Rooms
    {
        get
        {
            if (rooms.IsDefault)
            {
                var kerf = Lengths.Up(Shop.TableSaw.Kerf);
                rooms = [.. Patterns.SelectMany(p => Enumerable.Range(0, p.Lanes.Length).SelectMany(_ => p.Runs.Select(r => Lengths.Down(r.Length) + kerf)))];
            }

            return rooms;
        }
    }

    /// <summary>Copies of a panel part that are still to be made.</summary>
    internal int StillNeeded(GiftDemand gift, Part part) => Done.StillNeeded(gift.Gift.Label, part);

    /// <summary>True when the segments keep every pin of a gift.</summary>
    internal bool KeepsPins(int gift, IReadOnlyCollection<Search.Segment> segments) => Pins.Where(p => p.GiftIndex == gift).All(pin =>
        segments.Any(s => s.Panel >= 0 && IsOf(pin, s) && Panels[s.Panel].IsFor(gift, pin.Part)));

    /// <summary>True when a glue-up should have a strip of the offcut.</summary>
    internal bool IsPinned(PanelCandidate panel, int pattern) =>
        Pins.Any(pin => panel.IsFor(pin.GiftIndex, pin.Part) && pin.OffcutIndex == Patterns[pattern].OffcutIndex);

    /// <summary>True when a segment is of the wood that is pinned.</summary>
    internal bool IsOf(PinDemand pin, Search.Segment segment) =>
        Patterns[segment.Pattern].OffcutIndex == pin.OffcutIndex && (pin.Piece.Length == 0 || Patterns[segment.Pattern].Runs[segment.Run].Piece == pin.Piece);

    /// <summary>Number of a lane's clear stretch: its place in <see cref="Rooms"/>.</summary>
    internal int PlaceOf(Search.Segment segment)
    {
        if (firstPlaces.IsDefault)
        {
            var next = 0;
            firstPlaces = [.. Patterns.Select(p => (next += p.Lanes.Length * p.Runs.Length) - (p.Lanes.Length * p.Runs.Length))];
        }

        return firstPlaces[segment.Pattern] + (segment.Lane * Patterns[segment.Pattern].Runs.Length) + segment.Run;
    }
}
