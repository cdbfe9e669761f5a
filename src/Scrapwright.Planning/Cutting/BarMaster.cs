using Google.OrTools.LinearSolver;

namespace Scrapwright.Planning.Cutting;

/// <summary>The linear program over the patterns known so far: each item covered, no more bars of a stock than there are, least cost.</summary>
internal sealed class BarMaster : IDisposable
{
    private readonly BarSizes problem;
    private readonly Solver solver;
    private readonly Objective objective;
    private readonly Constraint[] covers;
    private readonly Constraint?[] racks;
    private readonly List<Variable> uses = [];

    internal BarMaster(BarSizes problem)
    {
        this.problem = problem;
        solver = Solver.CreateSolver("GLOP");
        objective = solver.Objective();
        objective.SetMinimization();
        covers = [.. problem.Demands.Select(d => solver.MakeConstraint(d, double.PositiveInfinity, ""))];
        racks = [.. problem.Available.Select((a, s) => problem.IsPlenty(s) ? null : solver.MakeConstraint(0, a, ""))];
    }

    /// <summary>Cost of the last solution.</summary>
    internal double Cost => objective.Value();

    /// <summary>How often each pattern is used in the last solution, in part as well.</summary>
    internal double[] Uses => [.. uses.Select(u => u.SolutionValue())];

    internal void Add(BarPattern pattern)
    {
        var use = solver.MakeNumVar(0, double.PositiveInfinity, "");
        objective.SetCoefficient(use, problem.Price[pattern.Stock]);
        foreach (var (item, count) in pattern.Counts) covers[item].SetCoefficient(use, count);
        racks[pattern.Stock]?.SetCoefficient(use, 1);
        uses.Add(use);
    }

    /// <summary>Solves; false when the solver gives up.</summary>
    internal bool Solve() => solver.Solve() == Solver.ResultStatus.OPTIMAL;

    /// <summary>Price of one more piece of an item, zero or more.</summary>
    internal double Dual(int item) => Math.Max(0, covers[item].DualValue());

    /// <summary>What one more bar of a stock would save, zero or more.</summary>
    internal double RackDual(int stock) => Math.Max(0, -(racks[stock]?.DualValue() ?? 0));

    public void Dispose() => solver.Dispose();
}
