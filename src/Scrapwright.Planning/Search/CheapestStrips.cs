using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Wood;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>
/// The cheapest strips that fill one glue-up, by dynamic programming over the number of strips, the width covered and the species of the last strip,
/// so that neighbours always go together. Widths count in steps of a tenth of a millimetre.
/// </summary>
internal sealed class CheapestStrips
{
    /// <summary>Marks of the grid of widths in one step.</summary>
    private const int Step = 10;

    private readonly Problem problem;
    private readonly PanelCandidate panel;
    private readonly ImmutableArray<SegmentOption> options;
    private readonly string[] species;
    private readonly int[] speciesOf;
    private readonly bool[,] apart;
    private readonly int most;
    private readonly bool roundUp;
    private readonly int steps;
    private readonly int[] stepsOf;

    /// <summary>Prepares a glue-up.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="panel">The glue-up, or one that stands for all alike.</param>
    /// <param name="options">What could serve it.</param>
    /// <param name="isBound">True to count widths in the strips' favour, for a bound; false to count them against the strips, for a filling that holds.</param>
    internal CheapestStrips(Problem problem, PanelCandidate panel, ImmutableArray<SegmentOption> options, bool isBound)
    {
        this.problem = problem;
        this.panel = panel;
        this.options = options;
        roundUp = isBound;
        species = [.. options.Select(o => o.Species).Distinct().OrderByDescending(s => SpeciesTable.Get(s).Colour.L).ThenBy(s => s, StringComparer.Ordinal)];
        speciesOf = [.. options.Select(o => Array.IndexOf(species, o.Species))];
        apart = new bool[species.Length, species.Length];
        for (var one = 0; one < species.Length; one++)
        {
            for (var other = 0; other < species.Length; other++)
            {
                apart[one, other] = MayFollow(one, other);
            }
        }

        most = Math.Min(panel.Wish.MaximumStrips, PlanModel.MostStrips);
        var needed = Grid.Hundredths.Up(panel.Needs.WidthBase);
        steps = (int)(roundUp ? needed / Step : (needed + Step - 1) / Step);
        stepsOf = [.. options.Select(o => (int)Math.Clamp(roundUp ? (o.Filling + Step - 1) / Step : o.Filling / Step, 0, steps))];
    }

    /// <summary>The cheapest strips in their order, or null when there are none.</summary>
    /// <param name="costs">Cost of each option; infinite for one that may not be taken.</param>
    internal (double Cost, ImmutableArray<int> Options)? Find(double[] costs)
    {
        var kinds = species.Length;
        var layer = (steps + 1) * kinds;
        var best = new double[(most + 1) * layer];
        var from = new (int Option, int State)[(most + 1) * layer];
        Array.Fill(best, double.PositiveInfinity);
        var cheapest = CheapestByStepsAndSpecies(costs);
        foreach (var option in cheapest)
        {
            Offer(1, stepsOf[option], option, costs[option], -1);
        }

        var before = new double[layer];
        var beforeState = new int[layer];
        for (var count = 1; count < most; count++)
        {
            BestBefore(count);
            foreach (var option in cheapest)
            {
                var kind = speciesOf[option];
                for (var covered = 0; covered <= steps; covered++)
                {
                    var cost = before[(covered * kinds) + kind];
                    if (!double.IsPositiveInfinity(cost))
                    {
                        Offer(count + 1, covered + stepsOf[option], option, cost + costs[option], beforeState[(covered * kinds) + kind]);
                    }
                }
            }
        }

        var (end, total) = (-1, double.PositiveInfinity);
        for (var count = Math.Max(1, panel.Wish.MinimumStrips); count <= most; count++)
        {
            for (var kind = 0; kind < kinds; kind++)
            {
                var state = (count * layer) + (steps * kinds) + kind;
                if (best[state] < total)
                {
                    (end, total) = (state, best[state]);
                }
            }
        }

        return end < 0 ? null : (total, Trace(end));

        void Offer(int count, int covered, int option, double cost, int state)
        {
            var to = (count * layer) + (Math.Min(covered, steps) * kinds) + speciesOf[option];
            if (cost < best[to])
            {
                best[to] = cost;
                from[to] = (option, state);
            }
        }

        void BestBefore(int count)
        {
            for (var covered = 0; covered <= steps; covered++)
            {
                for (var kind = 0; kind < kinds; kind++)
                {
                    var (least, leastState) = (double.PositiveInfinity, -1);
                    for (var last = 0; last < kinds; last++)
                    {
                        var state = (count * layer) + (covered * kinds) + last;
                        if (best[state] < least && apart[last, kind])
                        {
                            (least, leastState) = (best[state], state);
                        }
                    }

                    before[(covered * kinds) + kind] = least;
                    beforeState[(covered * kinds) + kind] = leastState;
                }
            }
        }

        ImmutableArray<int> Trace(int state)
        {
            var strips = ImmutableArray.CreateBuilder<int>();
            for (; state >= 0; state = from[state].State)
            {
                strips.Add(from[state].Option);
            }

            return strips.ToImmutable();
        }
    }

    /// <summary>Of options alike in species and steps only the cheapest is ever taken; the same one may come twice, which the caller checks.</summary>
    private List<int> CheapestByStepsAndSpecies(double[] costs)
    {
        var slots = new int[(steps + 1) * species.Length];
        Array.Fill(slots, -1);
        for (var option = 0; option < options.Length; option++)
        {
            var slot = (stepsOf[option] * species.Length) + speciesOf[option];
            if (stepsOf[option] > 0 && !double.IsPositiveInfinity(costs[option]) && (slots[slot] < 0 || costs[option] < costs[slots[slot]]))
            {
                slots[slot] = option;
            }
        }

        // An option no wider and no cheaper than another of its species is never better.
        var kept = new List<int>();
        for (var kind = 0; kind < species.Length; kind++)
        {
            var least = double.PositiveInfinity;
            for (var width = steps; width > 0; width--)
            {
                var option = slots[(width * species.Length) + kind];
                if (option >= 0 && costs[option] < least)
                {
                    least = costs[option];
                    kept.Add(option);
                }
            }
        }

        return kept;
    }

    /// <summary>From light to dark the woods come in their order; elsewhere two that may touch may follow each other. A bound lets one wood touch itself where sisters may.</summary>
    private bool MayFollow(int last, int next) => !panel.IsStriped
        || (panel.Wish.Pattern == StripPattern.Graduated
            ? next > last
            : (roundUp && panel.IsBookMatchWished && next == last) || panel.Wish.MayTouch(SpeciesTable.Get(species[last]), SpeciesTable.Get(species[next]), problem.Shop));
}
