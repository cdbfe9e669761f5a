using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Planning.Problems;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Building;

/// <summary>A milled strip, cut to the length its use needs.</summary>
/// <param name="Segment">What it was in the search.</param>
/// <param name="Pattern">Its offcut's pattern.</param>
/// <param name="Piece">The piece.</param>
/// <param name="Spread">One standard deviation of its thickness.</param>
internal sealed record PlacedStrip(Segment Segment, OffcutPattern Pattern, Piece Piece, Length Spread)
{
    /// <summary>Piece of its sister in the glue-up; empty for none.</summary>
    internal string Sister { get; init; } = "";

    /// <summary>True when it is the one of two sisters that is turned over.</summary>
    internal bool IsTurnedOver { get; init; }

    internal PatternLane Lane => Pattern.Lanes[Segment.Lane];
}
