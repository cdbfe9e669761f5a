using System.Collections.Immutable;

namespace Scrapwright.Core.Shops;

/// <summary>Something that makes work quicker, to be made or bought once.</summary>
public sealed record Jig
{
    /// <summary>Name in files, unique.</summary>
    public required string Key { get; init; }

    /// <summary>Name on screens and paper.</summary>
    public required string Name { get; init; }

    /// <summary>What it is used for.</summary>
    public required ImmutableArray<Operation> Operations { get; init; }

    /// <summary>Saved each time a station is set up for one of them. [min], from zero; estimate</summary>
    public int SetUpMinutes { get; init; }

    /// <summary>Saved with each piece. [s], from zero; estimate</summary>
    public int EachSeconds { get; init; }

    /// <summary>What it takes to make. [min], at least 1; estimate</summary>
    public required int MakeMinutes { get; init; }

    /// <summary>What has to be bought to make it, in the shop's currency, exact. From zero</summary>
    public decimal Material { get; init; }

    /// <summary>True when it serves only pieces that are too small for the machine alone.</summary>
    public bool OnlySmall { get; init; }

    /// <summary>True when the shop has it.</summary>
    public bool IsOwned { get; init; }

    /// <summary>Anything; empty for nothing.</summary>
    public string Note { get; init; } = "";
}
