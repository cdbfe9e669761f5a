using System.Collections.Immutable;
using Scrapwright.Core.Plans;

namespace Scrapwright.Client.Api;

/// <summary>A planning run as it stands. Kept on the server, so that a page that is loaded again finds it.</summary>
public sealed record RunStatus
{
    /// <summary>Which run; 0 when there was none yet. Grows.</summary>
    public long Run { get; init; }

    /// <summary>Where it stands.</summary>
    public RunState State { get; init; } = RunState.Idle;

    /// <summary>What the search is at, in words.</summary>
    public string Phase { get; init; } = "";

    /// <summary>Time since the start, or that the run took. [s]</summary>
    public double ElapsedSeconds { get; init; }

    /// <summary>Longest search asked for. [s]</summary>
    public double LimitSeconds { get; init; }

    /// <summary>Levels known so far, with bounds.</summary>
    public ImmutableArray<Level> Levels { get; init; } = [];

    /// <summary>Whether this run has found a plan; <see cref="ApiRoutes.Plan"/> gives it.</summary>
    public bool HasPlan { get; init; }

    /// <summary>How many plans this run has found so far, each better than the one before; when it grows there is a new one to fetch.</summary>
    public int Plans { get; init; }

    /// <summary>Every gift with what is missing when none can be made; empty otherwise (a plan has its own list).</summary>
    public ImmutableArray<UnmadeGift> Unmade { get; init; } = [];

    /// <summary>Whether the run began from a plan before.</summary>
    public bool HasFormer { get; init; }

    /// <summary>What differs from the plan before, at the end of a run that began from one.</summary>
    public ImmutableArray<PlanChange> Changes { get; init; } = [];

    /// <summary>What went wrong, for the maker; empty unless failed.</summary>
    public string Message { get; init; } = "";
}
