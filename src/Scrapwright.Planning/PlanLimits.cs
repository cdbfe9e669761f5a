namespace Scrapwright.Planning;

/// <summary>When to stop, and how to search.</summary>
public sealed record PlanLimits
{
    /// <summary>Longest search, seconds of wall clock; above zero.</summary>
    public double Seconds { get; init; } = 10;

    /// <summary>Seed of the search.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>Threads of the search.</summary>
    public int Workers { get; init; } = 2;

    /// <summary>When true, one thread and a limit in deterministic work instead of wall clock: same request, seed and limits give the same plan.</summary>
    public bool Deterministic { get; init; }
}
