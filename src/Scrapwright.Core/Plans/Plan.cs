using System.Collections.Immutable;

namespace Scrapwright.Core.Plans;

/// <summary>The answer: what is made from what, every step, every leftover, and how sure it is. Holds what it was made from, so that it can be audited alone.</summary>
public sealed record Plan
{
    /// <summary>Version of this form; 1.</summary>
    public int Version { get; init; } = 1;

    /// <summary>What it was made from.</summary>
    public required PlanRequest Request { get; init; }

    /// <summary>SHA-256 of the request, so that a changed request is noticed.</summary>
    public required string Fingerprint { get; init; }

    /// <summary>The gifts that are made, in the request's order.</summary>
    public required ImmutableArray<MadeGift> Made { get; init; }

    /// <summary>The gifts that are not, with reasons.</summary>
    public required ImmutableArray<UnmadeGift> Unmade { get; init; }

    /// <summary>The glue-ups.</summary>
    public required ImmutableArray<GlueUp> GlueUps { get; init; }

    /// <summary>Boards glued face to face from two thin offcuts each, of which strips or parts are cut; empty in plans written before there were any.</summary>
    public ImmutableArray<FacedBoard> Faced { get; init; } = [];

    /// <summary>The strips that solid parts are cut from.</summary>
    public required ImmutableArray<BoardRun> Boards { get; init; }

    /// <summary>Every step in working order.</summary>
    public required ImmutableArray<Step> Steps { get; init; }

    /// <summary>Every piece that is no part in the end.</summary>
    public required ImmutableArray<Leftover> Leftovers { get; init; }

    /// <summary>Where the wood of every single offcut went, in the pile's order, then that of the boards in <see cref="Faced"/>.</summary>
    public required ImmutableArray<LedgerRow> Ledger { get; init; }

    /// <summary>Rods.</summary>
    public required ImmutableArray<RodUse> Rods { get; init; }

    /// <summary>What to buy.</summary>
    public required ImmutableArray<ShoppingItem> Shopping { get; init; }

    /// <summary>Strips of the plan before, to which this one was to keep as far as it could; empty when there was none.</summary>
    public ImmutableArray<FormerStrip> Before { get; init; } = [];

    /// <summary>The levels of the objective in order.</summary>
    public required ImmutableArray<Level> Levels { get; init; }
}
