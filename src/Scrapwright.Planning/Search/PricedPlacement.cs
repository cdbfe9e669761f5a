using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Wood;
using Scrapwright.Planning.Building;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>
/// Places gifts one after the other, each glue-up with its cheapest strips by dynamic programming, where wood costs its volume and what its place is worth
/// to others: with the prices of the bound the single gifts find nearly by themselves what is best for all.
/// </summary>
internal sealed partial class PricedPlacement
{
    private const int MostAttempts = 8;

    private readonly Problem problem;
    private readonly SegmentOptions options;
    private readonly double[] prices;
    private readonly double[] rents;
    private readonly double[] dearest;
    private readonly Dictionary<int, CheapestStrips> fillers = [];
    private readonly GiftGroups groups;
    private string avoided = "";
    private bool favoursPins;

    internal PricedPlacement(Problem problem, SegmentOptions options, GiftGroups groups, double[] prices)
    {
        this.problem = problem;
        this.options = options;
        this.groups = groups;
        this.prices = prices;
        rents = [.. problem.Patterns.Select((p, i) => Enumerable.Range(problem.PlaceOf(new Segment(i, 0, 0, -1, -1)), p.Lanes.Length * p.Runs.Length).Sum(place => problem.Rooms[place] * prices[place]))];
        dearest = new double[problem.Offcuts.Length];
        for (var i = 0; i < rents.Length; i++)
        {
            var offcut = problem.Patterns[i].OffcutIndex;
            dearest[offcut] = Math.Max(dearest[offcut], rents[i]);
        }
    }

    /// <summary>Places gifts into the whole pile, in the order given.</summary>
    internal Placement PlaceAll(IEnumerable<int> gifts)
    {
        var (made, panels, segments) = Place(gifts, new OpenPile(problem));
        var placement = new Placement(
            [.. problem.Gifts.Select(g => made.Contains(g.Index))], [.. panels.Concat(problem.DonePanels).Order()], segments.AddRange(problem.DoneSegments), []);
        return placement with { Values = PlacementValues.Of(problem, placement) };
    }

    /// <summary>Places gifts into what is left of the pile, in the order given; those that find no wood are left out.</summary>
    /// <param name="gifts">Places of the gifts.</param>
    /// <param name="pile">What is left of the pile.</param>
    /// <param name="around">The segments of gifts already placed, from which those of the same circle shall differ.</param>
    internal (ImmutableArray<int> Made, ImmutableArray<int> Panels, ImmutableArray<Segment> Segments) Place(IEnumerable<int> gifts, OpenPile pile, IEnumerable<Segment>? around = null)
    {
        var made = ImmutableArray.CreateBuilder<int>();
        var panels = ImmutableArray.CreateBuilder<int>();
        var segments = ImmutableArray.CreateBuilder<Segment>();
        var looks = new CircleLooks(problem, around ?? []);
        var open = gifts.ToList();
        while (open.Count > 0)
        {
            var gift = problem.Gifts[open[0]];
            open.RemoveAt(0);
            var alone = PlaceUnlike(gift, pile, looks);
            if (PlaceWithPartner(gift, alone, pile, looks, open) is { } pair)
            {
                open.Remove(pair.Partner);
                Take(pair.Placed, [gift, problem.Gifts[pair.Partner]]);
            }
            else if (alone is { } placed)
            {
                Take(placed, [gift]);
            }
        }

        return (made.ToImmutable(), panels.ToImmutable(), segments.ToImmutable());

        void Take((OpenPile Pile, List<int> Panels, List<Segment> Segments) placed, GiftDemand[] served)
        {
            pile = placed.Pile;
            panels.AddRange(placed.Panels);
            segments.AddRange(placed.Segments);
            foreach (var gift in served)
            {
                made.Add(gift.Index);
                looks.Add(gift, SpeciesOf(placed.Segments.Where(s => s.GiftsIn(problem).Contains(gift.Index))));
            }
        }
    }

    private HashSet<string> SpeciesOf(IEnumerable<Segment> segments) => [.. segments.Select(s => problem.Patterns[s.Pattern].Offcut.Species)];

    /// <summary>The cheapest placement of a gift; when another gift of its circle has the same species, one without one of them, if there is one.</summary>
    private (OpenPile Pile, List<int> Panels, List<Segment> Segments)? PlaceUnlike(GiftDemand gift, OpenPile pile, CircleLooks looks)
    {
        avoided = "";
        if (Try() is not { } first)
        {
            return null;
        }

        var species = SpeciesOf(first.Segments);
        if (!looks.HasLike(gift, species))
        {
            return first;
        }

        foreach (var one in species.Order(StringComparer.Ordinal))
        {
            avoided = one;
            if (Try() is { } other && !looks.HasLike(gift, SpeciesOf(other.Segments)))
            {
                avoided = "";
                return other;
            }
        }

        avoided = "";
        return first;

        (OpenPile Pile, List<int> Panels, List<Segment> Segments)? Try()
        {
            // Pinned wood is made cheap only where the cheapest strips do not keep the pins by themselves.
            foreach (var favours in (ReadOnlySpan<bool>)(problem.Pins.IsEmpty ? [false] : [false, true]))
            {
                favoursPins = favours;
                var trial = pile.Copy();
                if (PlaceGift(gift, trial) is { } placed && problem.KeepsPins(gift.Index, placed.Segments))
                {
                    return (trial, placed.Panels, placed.Segments);
                }
            }

            return null;
        }
    }

    /// <summary>A gift's runs and glue-ups, but for one part when another glue-up serves that.</summary>
    private (List<int> Panels, List<Segment> Segments)? PlaceGift(GiftDemand gift, OpenPile pile, string served = "")
    {
        var panels = new List<int>();
        var segments = new List<Segment>();
        foreach (var demand in problem.Runs.Where(r => r.GiftIndex == gift.Index && r.Done is null))
        {
            for (var i = 0; i < demand.Runs.Length; i++)
            {
                var cheapest = options.ForSolid(demand.Index).Where(pile.HasRoom).MinBy(o => Cost(o, pile));
                if (cheapest is null)
                {
                    return null;
                }

                pile.Take(cheapest);
                segments.Add(cheapest.Segment with { Solid = demand.Index });
            }
        }

        foreach (var ways in PartWays.Of(problem, gift).Where(w => w.Part.Key != served))
        {
            if (PlacePart(ways, pile) is not { } best)
            {
                return null;
            }

            foreach (var (panel, strips) in best)
            {
                panels.Add(panel);
                foreach (var strip in strips)
                {
                    pile.Take(strip);
                    segments.Add(strip.Segment with { Panel = panel });
                }
            }
        }

        return (panels, segments);
    }

    /// <summary>The cheapest way whose glue-ups all find strips.</summary>
    private List<(int Panel, ImmutableArray<SegmentOption> Strips)>? PlacePart(PartWays ways, OpenPile pile)
    {
        // The first glue-up of every mode, on the pile as it is, tells what a way costs about.
        var firsts = ways.Modes.Select(m => Fill(m.Index, pile)).ToArray();
        return ways.Ways.Where(way => way.Zip(firsts).All(p => p.First == 0 || p.Second is not null))
            .OrderBy(way => way.Zip(firsts).Sum(p => p.First == 0 ? 0 : p.First * p.Second!.Value.Cost))
            .Select(way => PlaceWay(ways, way, pile)).FirstOrDefault(placed => placed is not null);
    }

    private List<(int Panel, ImmutableArray<SegmentOption> Strips)>? PlaceWay(PartWays ways, ImmutableArray<int> way, OpenPile pile)
    {
        var trial = pile.Copy();
        var panels = new List<(int, ImmutableArray<SegmentOption>)>();
        foreach (var (mode, glueUps) in way.Index())
        {
            for (var slot = 0; slot < glueUps; slot++)
            {
                var panel = ways.Modes[mode].Index + slot;
                if (Fill(panel, trial) is not { } filling)
                {
                    return null;
                }

                foreach (var strip in filling.Strips)
                {
                    trial.Take(strip);
                }

                panels.Add((panel, filling.Strips));
            }
        }

        return panels;
    }

    /// <summary>The cheapest strips of a glue-up on what is left of the pile. When they take more of an offcut than it has, one of its other uses is closed and they are sought again.</summary>
    private (double Cost, ImmutableArray<SegmentOption> Strips)? Fill(int panel, OpenPile pile)
    {
        var all = options.ForPanel(panel);
        var filler = FillerOf(panel, all);
        var candidate = problem.Panels[panel];
        double[] costs = [.. all.Select(o => pile.HasRoom(o) && o.Species != avoided ? Cost(o, pile) * Favour(o) : double.PositiveInfinity)];
        for (var attempt = 0; attempt < MostAttempts; attempt++)
        {
            if (filler.Find(costs) is not { } found)
            {
                return null;
            }

            if (FirstWithoutRoom(found.Options, all, pile) is not { } tooMuch)
            {
                ImmutableArray<SegmentOption> strips = [.. found.Options.Select(i => all[i])];
                return strips.Sum(s => s.Width + 1) <= Grid.Hundredths.Down(candidate.WidestRough)
                    && new PanelStrips(problem, candidate, [.. strips.Select(s => s.Segment)]).FindBest() is not null
                        ? (found.Cost, strips)
                        : null;
            }

            var offcut = OffcutOf(all[tooMuch]);
            var kept = found.Options.First(i => OffcutOf(all[i]) == offcut);
            for (var i = 0; i < all.Length; i++)
            {
                if (i == tooMuch || (i != kept && OffcutOf(all[i]) == offcut))
                {
                    costs[i] = double.PositiveInfinity;
                }
            }
        }

        return null;

        double Favour(SegmentOption option) => favoursPins && problem.IsPinned(candidate, option.Segment.Pattern) ? 1e-3 : 1;
    }

    private CheapestStrips FillerOf(int panel, ImmutableArray<SegmentOption> all)
    {
        var type = groups.TypeOf(panel);
        if (!fillers.TryGetValue(type, out var filler))
        {
            fillers[type] = filler = new CheapestStrips(problem, problem.Panels[panel], all, isBound: false);
        }

        return filler;
    }

    private static int? FirstWithoutRoom(ImmutableArray<int> found, ImmutableArray<SegmentOption> all, OpenPile pile)
    {
        var trial = pile.Copy();
        foreach (var index in found)
        {
            if (!trial.HasRoom(all[index]) || found.Count(i => i == index) > all[index].Most)
            {
                return index;
            }

            trial.Take(all[index]);
        }

        return null;
    }

    private int OffcutOf(SegmentOption option) => problem.Patterns[option.Segment.Pattern].OffcutIndex;

    /// <summary>Volume, what the place is worth to others, and what the offcut loses by being milled and ripped that way.</summary>
    private double Cost(SegmentOption option, OpenPile pile)
    {
        var offcut = OffcutOf(option);
        var loss = pile.PatternOf(offcut) is null ? dearest[offcut] - rents[option.Segment.Pattern] : 0;
        return option.Wood + (option.Marks * prices[option.Place]) + loss;
    }
}
