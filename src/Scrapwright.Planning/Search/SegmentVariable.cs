using Google.OrTools.Sat;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>How many of a segment are used.</summary>
/// <param name="Option">The segment with what it gives and costs.</param>
/// <param name="Count">The variable.</param>
internal sealed record SegmentVariable(SegmentOption Option, IntVar Count)
{
    internal Segment Segment => Option.Segment;

    internal string Species => Option.Species;

    internal long Most => Option.Most;

    internal long Wood => Option.Wood;

    /// <summary>Net width of its lane, on the grid, rounded down.</summary>
    internal long Width { get; } = Grid.Hundredths.Down(Option.NetWidth);
}
