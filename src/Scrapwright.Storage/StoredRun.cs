using System.Collections.Immutable;
using Scrapwright.Core.Plans;

namespace Scrapwright.Storage;

/// <summary>A planning run as kept, so that it is still known after the program was started again.</summary>
public sealed record StoredRun
{
    /// <summary>Which; above zero, grows.</summary>
    public long Id { get; init; }

    /// <summary>How it stands, one word: <c>running</c>, <c>done</c>, <c>cancelled</c> or <c>failed</c>.</summary>
    public required string State { get; init; }

    /// <summary>When it began, UTC.</summary>
    public required DateTime Started { get; init; }

    /// <summary>Time it took. [s]</summary>
    public double ElapsedSeconds { get; init; }

    /// <summary>Longest search asked for. [s]</summary>
    public required double LimitSeconds { get; init; }

    /// <summary>Seed of the search.</summary>
    public required int Seed { get; init; }

    /// <summary>What it was at last.</summary>
    public string Phase { get; init; } = "";

    /// <summary>How many plans it found.</summary>
    public int Plans { get; init; }

    /// <summary>Levels known at the end.</summary>
    public ImmutableArray<Level> Levels { get; init; } = [];

    /// <summary>Every gift with what is missing when none can be made.</summary>
    public ImmutableArray<UnmadeGift> Unmade { get; init; } = [];

    /// <summary>Whether it began from a plan before.</summary>
    public bool HasFormer { get; init; }

    /// <summary>What differs from the plan before; empty when there was none.</summary>
    public ImmutableArray<PlanChange> Changes { get; init; } = [];

    /// <summary>What went wrong; empty when nothing did.</summary>
    public string Message { get; init; } = "";
}
