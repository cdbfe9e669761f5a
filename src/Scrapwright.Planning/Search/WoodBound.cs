using System.Diagnostics;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>
/// What the wood level cannot go below, by Lagrangian relaxation: with a price on every place in the pile, each glue-up takes its cheapest strips and each
/// offcut its dearest pattern; whatever the prices, no placement of that worth uses less wood. The prices come from column generation.
/// </summary>
internal sealed class WoodBound
{
    /// <summary>Share of the bound that more rounds could still win below which they are not worth their time.</summary>
    private const double CloseEnough = 0.001;

    private readonly Problem problem;
    private readonly SegmentOptions options;
    private readonly CheapestStrips[] panels;
    private readonly long weightWanted;

    internal WoodBound(Problem problem, SegmentOptions options, long weightWanted)
    {
        this.problem = problem;
        this.options = options;
        this.weightWanted = weightWanted;
        Groups = new GiftGroups(problem, options);
        panels = [.. Groups.PanelTypes.Select(p => new CheapestStrips(problem, p, options.ForPanel(p.Index), isBound: true))];
        Prices = new double[problem.Rooms.Length];
    }

    /// <summary>The best bound so far, of what is not glued or cut already. [mm³]</summary>
    internal long Value { get; private set; }

    /// <summary>The prices it was found with, per mark of length with a kerf, by place.</summary>
    internal double[] Prices { get; private set; }

    /// <summary>The groups of gifts it works on.</summary>
    internal GiftGroups Groups { get; }

    /// <summary>Fewest glue-ups, beside those that are glued, that a placement of that worth can do with; a part of a gift counts in full however little of the gift is made.</summary>
    internal long LeastGlueUps { get; private set; }

    /// <summary>Makes the bound better, round after round, until it gets no better, the rounds are done or the time is up.</summary>
    /// <param name="start">A placement of that worth: its glue-ups are the first columns.</param>
    /// <param name="mostRounds">Most rounds of column generation; with 0 only the compact relaxation's prices are tried.</param>
    /// <param name="limit">Longest time; ignored when null.</param>
    /// <param name="cancellationToken">Ends it early; the bound so far holds.</param>
    internal void Run(Placement start, int mostRounds, TimeSpan? limit, CancellationToken cancellationToken)
    {
        var clock = Stopwatch.StartNew();
        using (var compact = new ColumnMaster(problem, options, Groups, weightWanted, compact: true))
        {
            if (compact.Solve() is not { } value)
            {
                return;
            }

            Note(value, compact.Prices());
        }

        var fillings = Fill(Prices);
        Note(Lagrangian(Prices, fillings), Prices);
        LeastGlueUps = (long)Math.Ceiling(Cheapest(group => group.Parts.Sum(part => part.Least(_ => 1))) - 1e-9);
        using var master = new ColumnMaster(problem, options, Groups, weightWanted, compact: false);
        var known = new HashSet<string>();
        AddAll(master, known, fillings);
        AddAll(master, start);
        for (var round = 0; round < mostRounds && !(clock.Elapsed > limit) && !cancellationToken.IsCancellationRequested; round++)
        {
            if (master.Solve() is not { } value || value - Value <= CloseEnough * Value)
            {
                break;
            }

            // Between the prices that gave the best bound and the newest: the newest alone jump about.
            var newest = master.Prices();
            if (Try(Between(newest, Prices)) == 0 && Try(newest) == 0)
            {
                break;
            }
        }

        int Try(double[] prices)
        {
            var found = Fill(prices);
            Note(Lagrangian(prices, found), prices);
            return AddAll(master, known, found);
        }
    }

    private static double[] Between(double[] newest, double[] best) => [.. newest.Zip(best, (one, other) => (0.3 * one) + (0.7 * other))];

    private static int AddAll(ColumnMaster master, HashSet<string> known, (double Cost, SegmentOption[] Strips)?[] fillings)
    {
        var added = 0;
        for (var type = 0; type < fillings.Length; type++)
        {
            if (fillings[type] is { } filling && known.Add($"{type}:{string.Join(',', filling.Strips.Select(s => s.Place).Order())}"))
            {
                master.Add(type, filling.Strips);
                added++;
            }
        }

        return added;
    }

    private void AddAll(ColumnMaster master, Placement placement)
    {
        foreach (var panel in placement.Panels.Where(p => problem.Panels[p].Done is null))
        {
            var all = options.ForPanel(panel).ToDictionary(o => o.Place);
            master.Add(Groups.TypeOf(panel), placement.Segments.Where(s => s.Panel == panel).Select(s => all[problem.PlaceOf(s)]));
        }
    }

    private void Note(double bound, double[] prices)
    {
        // A linear solver's numbers are good to about nine digits; what is beyond is not claimed.
        var safe = (long)Math.Floor(bound - 1 - (Math.Abs(bound) * 1e-8));
        if (safe > Value)
        {
            Value = safe;
            Prices = prices;
        }
    }

    private (double Cost, SegmentOption[] Strips)?[] Fill(double[] prices)
    {
        var found = new (double, SegmentOption[])?[panels.Length];
        Parallel.For(0, panels.Length, type =>
        {
            var all = options.ForPanel(Groups.PanelTypes[type].Index);
            double[] costs = [.. all.Select(o => o.Wood + (o.Marks * prices[o.Place]))];
            if (panels[type].Find(costs) is { } filling)
            {
                found[type] = (filling.Cost, [.. filling.Options.Select(o => all[o])]);
            }
        });
        return found;
    }

    private double Lagrangian(double[] prices, (double Cost, SegmentOption[] Strips)?[] fillings)
    {
        var runs = Groups.RunTypes.Select(r => options.ForSolid(r).Select(o => o.Wood + (o.Marks * prices[o.Place])).DefaultIfEmpty(double.PositiveInfinity).Min()).ToArray();
        return Cheapest(group =>
            group.Parts.Sum(part => part.Least(type => fillings[type]?.Cost ?? double.PositiveInfinity))
            + group.Runs.Sum(run => run.Count * runs[run.Type])) - Rents(prices);
    }

    /// <summary>The least that gifts of the wanted worth cost together, fractions of a gift allowed: those first that are worth most for their cost.</summary>
    private double Cheapest(Func<GiftGroup, double> costOf)
    {
        var total = 0.0;
        double missing = weightWanted;
        foreach (var (group, cost) in Groups.Groups.Select(g => (Group: g, Cost: costOf(g))).Where(c => !double.IsPositiveInfinity(c.Cost)).OrderBy(c => c.Cost / c.Group.Weight))
        {
            var number = Math.Min(group.Size, missing / group.Weight);
            if (number <= 0)
            {
                break;
            }

            total += number * cost;
            missing -= number * group.Weight;
        }

        return total;
    }

    /// <summary>What all offcuts' places are worth together, each offcut in its dearest pattern.</summary>
    private double Rents(double[] prices)
    {
        var rents = new double[problem.Offcuts.Length];
        for (var pattern = 0; pattern < problem.Patterns.Length; pattern++)
        {
            var first = problem.PlaceOf(new Segment(pattern, 0, 0, -1, -1));
            var rent = 0.0;
            for (var place = first; place < first + (problem.Patterns[pattern].Lanes.Length * problem.Patterns[pattern].Runs.Length); place++)
            {
                rent += problem.Rooms[place] * prices[place];
            }

            var offcut = problem.Patterns[pattern].OffcutIndex;
            rents[offcut] = Math.Max(rents[offcut], rent);
        }

        return rents.Sum();
    }
}
