using Google.OrTools.Sat;

namespace Scrapwright.Planning.Cutting;

/// <summary>Chooses among given patterns so that every item is covered at no more than a given cost.</summary>
internal static class BarCover
{
    /// <summary>The cheapest choice, or any within the cost when <paramref name="isAnyGood"/>: the search for one is much quicker without an aim.</summary>
    internal static BarAnswer Find(
        BarSizes problem, IReadOnlyList<(BarPattern Pattern, int MostUses)> patterns, long cost, bool isAnyGood, double work, CancellationToken cancellationToken)
    {
        var model = new CpModel();
        var uses = patterns.Select(p => model.NewIntVar(0, p.MostUses, "")).ToArray();
        var isTight = problem.Waste(cost) == 0;
        for (var item = 0; item < problem.Sizes.Length; item++)
        {
            if (problem.Demands[item] == 0) continue;
            var rows = Enumerable.Range(0, uses.Length).Where(p => patterns[p].Pattern.CountOf(item) > 0).ToArray();
            if (rows.Length == 0) return new BarAnswer(null, true);
            var cut = LinearExpr.WeightedSum(rows.Select(p => uses[p]), rows.Select(p => (long)patterns[p].Pattern.CountOf(item)));
            model.Add(isTight ? cut == problem.Demands[item] : cut >= problem.Demands[item]);
        }

        var total = LinearExpr.WeightedSum(uses, patterns.Select(p => problem.Price[p.Pattern.Stock]));
        model.Add(total <= cost);
        if (!isAnyGood) model.Minimize(total);
        for (var stock = 0; stock < problem.Room.Length; stock++)
        {
            var rack = Enumerable.Range(0, uses.Length).Where(p => patterns[p].Pattern.Stock == stock).Select(p => uses[p]).ToArray();
            if (rack.Length > 0 && !problem.IsPlenty(stock)) model.Add(LinearExpr.Sum(rack) <= problem.Available[stock]);
        }

        var solver = new CpSolver { StringParameters = FormattableString.Invariant($"num_workers:1 random_seed:1 max_deterministic_time:{work}") };
        using var stop = cancellationToken.Register(solver.StopSearch);
        var status = solver.Solve(model);
        var found = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? patterns.SelectMany((p, i) => Enumerable.Repeat(p.Pattern, (int)solver.Value(uses[i]))).ToList()
            : null;
        return new BarAnswer(found, status is CpSolverStatus.Optimal or CpSolverStatus.Infeasible);
    }
}
