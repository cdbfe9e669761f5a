using System.Numerics;

namespace Scrapwright.Planning.Cutting;

/// <summary>Column generation: the linear program over all patterns, solved with only those that matter, and the bound it proves.</summary>
/// <remarks>Source of the method: [GilmoreGomory1961]. The bound does not trust floating point: the prices of the linear program are made whole numbers, and the knapsack on them is exact.</remarks>
internal sealed class BarColumns
{
    /// <summary>How much a pattern has to gain before it is added, as a share of its bar's price. The bound allows for it.</summary>
    private const double LeastGain = 1e-7;

    private const int PatternsPerRound = 12;

    private readonly BarSizes problem;
    private readonly HashSet<string> keys = [];

    private BarColumns(BarSizes problem)
    {
        this.problem = problem;
        Scale = Math.Max(1, Math.Min(1L << 40, (1L << 50) / problem.Price.Max()));
    }

    /// <summary>The patterns known.</summary>
    internal List<BarPattern> Patterns { get; } = [];

    /// <summary>How often each is used in the linear optimum.</summary>
    internal double[] Uses { get; private set; } = [];

    /// <summary>The whole-number cost that no solution goes below; zero when pricing did not come to an end.</summary>
    internal long Bound { get; private set; }

    /// <summary>Prices of the pieces under which no pattern is worth more than its bar, in units of one part in <see cref="Scale"/>; null when pricing did not come to an end.</summary>
    internal BarPrices? Prices { get; private set; }

    /// <summary>What a cost of one is in whole-number prices.</summary>
    internal long Scale { get; }

    /// <summary>Generates patterns until none is missing.</summary>
    internal static BarColumns Generate(BarSizes problem, IEnumerable<BarPattern> known, int mostRounds, CancellationToken cancellationToken)
    {
        var columns = new BarColumns(problem);
        using var master = new BarMaster(problem);
        foreach (var pattern in known.Concat(Singles(problem))) columns.Add(master, pattern);
        var knapsack = new BarKnapsack(problem);
        for (var round = 0; round < mostRounds && !cancellationToken.IsCancellationRequested && master.Solve(); round++)
        {
            columns.Uses = master.Uses;
            var worth = problem.Sizes.Select((_, i) => (long)(master.Dual(i) * columns.Scale)).ToArray();
            var thresholds = problem.Price.Select((p, s) => (p * columns.Scale) + (long)(master.RackDual(s) * columns.Scale) + Math.Max(1, (long)(p * columns.Scale * LeastGain))).ToArray();
            var fresh = knapsack.Find(worth, thresholds, PatternsPerRound);
            if (fresh.Count == 0)
            {
                columns.Prove(worth, thresholds);
                break;
            }

            var before = columns.Patterns.Count;
            fresh.ForEach(p => columns.Add(master, p));
            if (columns.Patterns.Count == before) break;
        }

        return columns;
    }

    private static IEnumerable<BarPattern> Singles(BarSizes problem) =>
        from item in Enumerable.Range(0, problem.Sizes.Length)
        where problem.Demands[item] > 0
        from stock in Enumerable.Range(0, problem.Room.Length)
        let most = (int)Math.Min(problem.Demands[item], problem.Room[stock] / problem.Sizes[item])
        where most > 0 && problem.Available[stock] > 0
        select new BarPattern(stock, [(item, most)]);

    private void Add(BarMaster master, BarPattern pattern)
    {
        if (!keys.Add(pattern.Key)) return;
        Patterns.Add(pattern);
        master.Add(pattern);
    }

    /// <summary>No pattern of a stock is worth more than its threshold; scaled down, the prices are within every bar whose number is not limited.</summary>
    private void Prove(long[] worth, long[] thresholds)
    {
        BigInteger over = 1;
        BigInteger under = 1;
        for (var s = 0; s < thresholds.Length; s++)
        {
            BigInteger price = (BigInteger)problem.Price[s] * Scale;
            if (problem.IsPlenty(s) && price * under < over * thresholds[s]) (over, under) = (price, thresholds[s]);
        }

        var scaled = worth.Select(w => (long)(w * over / under)).ToArray();
        var racks = thresholds.Select((t, s) => problem.IsPlenty(s) ? 0 : BigInteger.Max(0, -((-t * over) / under) + 1 - ((BigInteger)problem.Price[s] * Scale))).Select(r => (long)r).ToArray();
        Prices = new BarPrices(scaled, racks);
        var sum = BigInteger.Zero;
        for (var i = 0; i < scaled.Length; i++) sum += (BigInteger)scaled[i] * problem.Demands[i];
        for (var s = 0; s < racks.Length; s++) sum -= (BigInteger)racks[s] * problem.Available[s];
        Prices = Prices with { Sum = (Int128)sum };
        Bound = (long)((BigInteger.Max(0, sum) + Scale - 1) / Scale);
    }
}
