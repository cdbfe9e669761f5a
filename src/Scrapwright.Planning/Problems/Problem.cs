using System.Collections.Immutable;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Problems;

/// <summary>A request worked out into offcuts with their patterns, glue-ups that may be made and runs of solid parts.</summary>
internal sealed record Problem
{
    private Grid? lengths;
    private ImmutableArray<int> firstPlaces;
    private ImmutableArray<long> rooms;

    internal required PlanRequest Request { get; init; }

    internal required ImmutableArray<Offcut> Offcuts { get; init; }

    internal required ImmutableArray<OffcutPattern> Patterns { get; init; }

    internal required ImmutableArray<GiftDesign> Designs { get; init; }

    internal required ImmutableArray<GiftDemand> Gifts { get; init; }

    internal required ImmutableArray<PanelCandidate> Panels { get; init; }

    internal required ImmutableArray<RunDemand> Runs { get; init; }

    internal Shop Shop => Request.Shop;

    /// <summary>Grid on which every length along the grain is exact where that can be.</summary>
    internal Grid Lengths => lengths ??= Grid.For(
    [
        Shop.TableSaw.Kerf, .. Patterns.SelectMany(p => p.Runs).Select(r => r.Length), .. Panels.Select(p => p.Needs.Overlap), .. Runs.Select(r => r.Needs.Length),
    ]);

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

    /// <summary>Number of a lane's clear stretch: its place in <see cref="Rooms"/>.</summary>
    internal int PlaceOf(Search.Segment segment) =>
        FirstPlaceOf(segment.Pattern) + (segment.Lane * Patterns[segment.Pattern].Runs.Length) + segment.Run;

    /// <summary>The first of a pattern's places.</summary>
    internal int FirstPlaceOf(int pattern)
    {
        if (firstPlaces.IsDefault)
        {
            var next = 0;
            firstPlaces = [.. Patterns.Select(p => (next += p.Lanes.Length * p.Runs.Length) - (p.Lanes.Length * p.Runs.Length))];
        }

        return firstPlaces[pattern];
    }
}
