using System.Collections.Immutable;

namespace Scrapwright.Core.Shops;

/// <summary>
/// The maker's own pace at every kind of work that was timed: a geometric mean of took over planned, drawn towards the usual while there are few readings.
/// </summary>
/// <remarks>
/// With x = ln(took / planned) of n readings, each bounded to a quarter and four times, the pace is exp(Σx / (n + 3)): the mean of a normal quantity known from n readings and from a guess of 1 that counts as three,
/// [ConjugateNormal]. From five readings on the spread is two standard deviations of x to both sides, 95 in a hundred of a log-normal quantity, [NistHandbook] 1.3.6.6.9. Three, five and the bounds are our own choice.
/// </remarks>
public sealed record ShopPaces
{
    // Our own choices: how many readings the guess counts as, from how many on the spread is the maker's own, how far a single reading may be believed to stray, and the least spread that a clock with whole minutes can tell.
    private const int GuessCounts = 3;
    private const int EnoughForSpread = 5;
    private const double FarthestRatio = 4;
    private const double LeastDeviation = 0.05;

    // When all goes well, and when it does not, while nobody knows better: estimate.
    private const int UsualLeastPerMille = 700, UsualMostPerMille = 1600;

    /// <summary>No readings: everything takes what is usual.</summary>
    public static ShopPaces Usual { get; } = new();

    /// <summary>One for each operation and setting that has readings, in order of the operations, then by setting.</summary>
    public ImmutableArray<OperationPace> Known { get; private init; } = [];

    /// <summary>The paces of readings, in any order.</summary>
    /// <param name="readings">The readings; one without minutes above zero is passed over.</param>
    public static ShopPaces Of(IEnumerable<TimeReading> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        return new()
        {
            Known =
            [
                .. readings.Where(r => r is { PlannedMinutes: > 0, TookMinutes: > 0 }).GroupBy(r => (r.Operation, r.Setting)).OrderBy(g => g.Key.Operation).ThenBy(g => g.Key.Setting, StringComparer.Ordinal)
                    .Select(g => Of(g.Key.Operation, g.Key.Setting, [.. g.Select(LogRatio)])),
            ],
        };
    }

    /// <summary>The pace at a kind of work; the usual one when it was never timed.</summary>
    /// <param name="operation">The kind of work.</param>
    /// <param name="setting">As in <see cref="TimeReading.Setting"/>.</param>
    public OperationPace For(Operation operation, string setting = "") =>
        Known.FirstOrDefault(p => p.Operation == operation && p.Setting == setting) ?? new(operation, setting, 0, 1000, UsualLeastPerMille, UsualMostPerMille);

    /// <summary>True when a pace is so far from that of others that a calendar made with them is out of date.</summary>
    /// <param name="others">The others.</param>
    public bool IsFarFrom(ShopPaces others)
    {
        ArgumentNullException.ThrowIfNull(others);
        return Known.Any(p => others.For(p.Operation, p.Setting).IsFarFrom(p)) || others.Known.Any(p => For(p.Operation, p.Setting).IsFarFrom(p));
    }

    /// <summary>Geometric mean of ratios with a guess of 1 that counts as so many of them; the plain one with none.</summary>
    internal static double GeometricMean(IReadOnlyCollection<double> logRatios, int guessCounts) => Math.Exp(logRatios.Sum() / (logRatios.Count + guessCounts));

    /// <summary>Standard deviation of logarithms round their own mean, one degree of freedom taken off.</summary>
    internal static double Deviation(IReadOnlyCollection<double> logRatios)
    {
        var mean = logRatios.Average();
        return Math.Sqrt(logRatios.Sum(x => (x - mean) * (x - mean)) / (logRatios.Count - 1));
    }

    private static OperationPace Of(Operation operation, string setting, double[] logRatios)
    {
        var pace = PerMille(GeometricMean(logRatios, GuessCounts));
        if (logRatios.Length < EnoughForSpread) return new(operation, setting, logRatios.Length, pace, UsualLeastPerMille, UsualMostPerMille);
        var far = Math.Exp(2 * Math.Max(LeastDeviation, Deviation(logRatios)));
        return new(operation, setting, logRatios.Length, pace, PerMille(1 / far), PerMille(far));
    }

    private static double LogRatio(TimeReading reading) => Math.Log(Math.Clamp(reading.TookMinutes / (double)reading.PlannedMinutes, 1 / FarthestRatio, FarthestRatio));

    // Whole thousandths are the same on every machine, whatever the last bit of a logarithm.
    private static int PerMille(double ratio) => (int)Math.Round(ratio * 1000, MidpointRounding.AwayFromZero);
}
