using Google.OrTools.LinearSolver;

namespace Scrapwright.Planning.Cutting;

/// <summary>As <see cref="BarCover"/>, by branching on linear programs: better where nearly every pattern has to be full.</summary>
internal static class BarTreeCover
{
    /// <summary>The cheapest choice, or any within the cost when <paramref name="isAnyGood"/>.</summary>
    internal static BarAnswer Find(
        BarSizes problem, IReadOnlyList<(BarPattern Pattern, int MostUses)> patterns, long cost, bool isAnyGood, int mostNodes, CancellationToken cancellationToken)
    {
        using var solver = Solver.CreateSolver("SCIP");
        var waste = problem.Waste(cost);
        var uses = patterns.Select(p => solver.MakeIntVar(0, p.MostUses, "")).ToArray();
        var covers = problem.Demands.Select((d, i) => solver.MakeConstraint(d, waste == 0 ? d : double.PositiveInfinity, "")).ToArray();
        var racks = problem.Available.Select((a, s) => problem.IsPlenty(s) ? null : solver.MakeConstraint(0, a, "")).ToArray();
        var total = solver.MakeConstraint(0, cost, "");
        for (var p = 0; p < uses.Length; p++)
        {
            var pattern = patterns[p].Pattern;
            foreach (var (item, count) in pattern.Counts) covers[item].SetCoefficient(uses[p], count);
            racks[pattern.Stock]?.SetCoefficient(uses[p], 1);
            total.SetCoefficient(uses[p], problem.Price[pattern.Stock]);
            if (!isAnyGood) solver.Objective().SetCoefficient(uses[p], problem.Price[pattern.Stock]);
        }

        solver.Objective().SetMinimization();
        solver.SetSolverSpecificParametersAsString($"limits/totalnodes = {mostNodes}");
        using var stop = cancellationToken.Register(() => solver.InterruptSolve());
        var status = solver.Solve();
        var found = status is Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE
            ? patterns.SelectMany((p, i) => Enumerable.Repeat(p.Pattern, (int)Math.Round(uses[i].SolutionValue()))).ToList()
            : null;
        return new BarAnswer(found, status is Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.INFEASIBLE);
    }
}
