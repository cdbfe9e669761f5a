using System.Collections.Immutable;
using Google.OrTools.LinearSolver;
using Scrapwright.Core.Plans;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>
/// The linear relaxation of the whole placement: gifts by group, glue-ups by type, wood by place. A glue-up is filled either by any mixture of strips
/// (the compact form, to begin with) or by whole fillings only (columns, added as they are found), which is much closer to what can be made.
/// </summary>
internal sealed class ColumnMaster : IDisposable
{
    private readonly Problem problem;
    private readonly GiftGroups groups;
    private readonly Solver solver;
    private readonly Variable[] patterns;
    private readonly Dictionary<int, Constraint> rooms = [];
    private readonly Variable[] made;
    private readonly Constraint[] panels;
    private readonly Constraint[] runs;
    private readonly Constraint worth;

    internal ColumnMaster(Problem problem, SegmentOptions options, GiftGroups groups, long weightWanted, bool compact)
    {
        this.problem = problem;
        this.groups = groups;
        solver = Solver.CreateSolver("GLOP") ?? throw new InvalidOperationException("The linear solver is missing from the solver package.");
        solver.Objective().SetMinimization();
        patterns = [.. problem.Patterns.Select(_ => solver.MakeNumVar(0, double.PositiveInfinity, ""))];
        foreach (var offcut in problem.Patterns.Select((p, i) => (p.OffcutIndex, i)).GroupBy(x => x.OffcutIndex))
        {
            var once = solver.MakeConstraint(double.NegativeInfinity, 1);
            foreach (var (_, pattern) in offcut)
            {
                once.SetCoefficient(patterns[pattern], 1);
            }
        }

        worth = solver.MakeConstraint(weightWanted, double.PositiveInfinity);
        panels = [.. groups.PanelTypes.Select(_ => solver.MakeConstraint(0, double.PositiveInfinity))];
        runs = [.. groups.RunTypes.Select(_ => solver.MakeConstraint(0, double.PositiveInfinity))];
        made = [.. groups.Groups.Select(AddGroup)];
        for (var type = 0; type < groups.RunTypes.Count; type++)
        {
            foreach (var option in options.ForSolid(groups.RunTypes[type]))
            {
                runs[type].SetCoefficient(Strip(option), 1);
            }
        }

        if (compact)
        {
            for (var type = 0; type < groups.PanelTypes.Count; type++)
            {
                AddMixture(type, options.ForPanel(groups.PanelTypes[type].Index));
            }
        }
    }

    /// <summary>Solves; null when there is no solution yet.</summary>
    internal double? Solve() => solver.Solve() == Solver.ResultStatus.OPTIMAL ? solver.Objective().Value() : null;

    /// <summary>The most that can be made by weight, fractions of a gift counted, whatever wood it takes; null when the solver gives none. Wood is no longer the objective after it.</summary>
    internal double? MostWorth()
    {
        solver.Objective().Clear();
        for (var group = 0; group < made.Length; group++)
        {
            solver.Objective().SetCoefficient(made[group], groups.Groups[group].Weight);
        }

        solver.Objective().SetMaximization();
        return Solve();
    }

    /// <summary>What a mark of length is worth at each place, never negative.</summary>
    internal double[] Prices()
    {
        var prices = new double[problem.Rooms.Length];
        foreach (var (place, room) in rooms)
        {
            prices[place] = Math.Max(0, -room.DualValue());
        }

        return prices;
    }

    /// <summary>Adds a filling as a column.</summary>
    internal void Add(int type, IEnumerable<SegmentOption> strips)
    {
        var column = solver.MakeNumVar(0, double.PositiveInfinity, "");
        panels[type].SetCoefficient(column, 1);
        long wood = 0;
        foreach (var place in strips.GroupBy(s => s.Place))
        {
            wood += place.Sum(s => s.Wood);
            RoomOf(place.First()).SetCoefficient(column, place.Sum(s => (double)s.Marks));
        }

        solver.Objective().SetCoefficient(column, wood);
    }

    /// <inheritdoc/>
    public void Dispose() => solver.Dispose();

    private Variable AddGroup(GiftGroup group)
    {
        var number = solver.MakeNumVar(0, group.Size, "");
        worth.SetCoefficient(number, group.Weight);
        foreach (var part in group.Parts)
        {
            var served = solver.MakeConstraint(0, 0);
            served.SetCoefficient(number, -1);
            foreach (var way in part.Ways)
            {
                var taken = solver.MakeNumVar(0, double.PositiveInfinity, "");
                served.SetCoefficient(taken, 1);
                for (var mode = 0; mode < way.Length; mode++)
                {
                    if (way[mode] > 0)
                    {
                        panels[part.Types[mode]].SetCoefficient(taken, -way[mode]);
                    }
                }
            }

            foreach (var (type, share) in part.Shared)
            {
                var taken = solver.MakeNumVar(0, double.PositiveInfinity, "");
                served.SetCoefficient(taken, 1);
                panels[type].SetCoefficient(taken, -share);
            }
        }

        foreach (var (type, count) in group.Runs)
        {
            runs[type].SetCoefficient(number, -count);
        }

        return number;
    }

    private void AddMixture(int type, ImmutableArray<SegmentOption> options)
    {
        var panel = groups.PanelTypes[type];
        var number = solver.MakeNumVar(0, double.PositiveInfinity, "");
        panels[type].SetCoefficient(number, 1);
        var width = solver.MakeConstraint(0, double.PositiveInfinity);
        width.SetCoefficient(number, -Grid.Hundredths.Up(panel.Needs.WidthBase));
        var few = solver.MakeConstraint(0, double.PositiveInfinity);
        few.SetCoefficient(number, -panel.Wish.MinimumStrips);
        var many = solver.MakeConstraint(double.NegativeInfinity, 0);
        many.SetCoefficient(number, -panel.Wish.MaximumStrips);
        foreach (var option in options)
        {
            var strip = Strip(option);
            width.SetCoefficient(strip, option.Filling);
            few.SetCoefficient(strip, 1);
            many.SetCoefficient(strip, 1);
        }
    }

    private Variable Strip(SegmentOption option)
    {
        var strip = solver.MakeNumVar(0, double.PositiveInfinity, "");
        solver.Objective().SetCoefficient(strip, option.Wood);
        RoomOf(option).SetCoefficient(strip, option.Marks);
        return strip;
    }

    private Constraint RoomOf(SegmentOption option)
    {
        if (!rooms.TryGetValue(option.Place, out var room))
        {
            rooms[option.Place] = room = solver.MakeConstraint(double.NegativeInfinity, 0);
            room.SetCoefficient(patterns[option.Segment.Pattern], -problem.Rooms[option.Place]);
        }

        return room;
    }
}
