using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans;

/// <summary>
/// Where the wood of one single offcut, or of one board glued face to face, went: In = Faced + Parts + Kept + Scrap + the waste rows, exactly.
/// What is in a board counts in the rows of its two offcuts as <see cref="Faced"/>, and from there on in the board's own row.
/// Parts count as the box they fill; holes, laps and mitres are cut inside that box.
/// </summary>
public sealed record LedgerRow
{
    /// <summary>Label of the single offcut or of the board.</summary>
    public required string Offcut { get; init; }

    /// <summary>Length × width × thickness as measured.</summary>
    public required Volume In { get; init; }

    /// <summary>In a board glued face to face; zero when it is in none.</summary>
    public Volume Faced { get; init; }

    /// <summary>In parts of gifts.</summary>
    public required Volume Parts { get; init; }

    /// <summary>In leftovers that go back to the pile.</summary>
    public required Volume Kept { get; init; }

    /// <summary>In leftovers that go to the scrap bin.</summary>
    public required Volume Scrap { get; init; }

    /// <summary>Dust and shavings by operation, in the order of <see cref="Shops.Operation"/>; no zero rows.</summary>
    public required ImmutableArray<WasteRow> Waste { get; init; }
}
