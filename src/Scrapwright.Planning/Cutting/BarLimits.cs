namespace Scrapwright.Planning.Cutting;

/// <summary>How much work a search for bars may do. No wall clock in it: same problem and limits, same outcome.</summary>
internal sealed record BarLimits
{
    /// <summary>Most patterns listed to prove that a cost cannot be reached.</summary>
    internal int MostPatterns { get; init; } = 150_000;

    /// <summary>Most patterns given to branching on linear programs; with more, only the constraint solver tries.</summary>
    internal int MostTreePatterns { get; init; } = 10_000;

    /// <summary>Most nodes of branching on linear programs in one call.</summary>
    internal int MostTreeNodes { get; init; } = 5000;

    /// <summary>Deterministic time of the constraint solver in one call, in its own unit, about a second each.</summary>
    internal double SolverWork { get; init; } = 60;

    /// <summary>Most times a fractional solution is rounded down to a whole one.</summary>
    internal int Dives { get; init; } = 12;

    /// <summary>Most rounds of pricing new patterns.</summary>
    internal int MostRounds { get; init; } = 2000;

    /// <summary>For the planner, where a proof is worth a second or two.</summary>
    internal static BarLimits Quick { get; } = new() { MostPatterns = 20_000, MostTreePatterns = 2000, MostTreeNodes = 100, SolverWork = 1, Dives = 4, MostRounds = 400 };
}
