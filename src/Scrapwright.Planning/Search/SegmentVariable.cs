using Google.OrTools.Sat;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>How many of a segment are used.</summary>
/// <param name="Segment">The segment, for its glue-up or run.</param>
/// <param name="Option">What it gives and costs.</param>
/// <param name="Count">The variable.</param>
internal sealed record SegmentVariable(Segment Segment, SegmentOption Option, IntVar Count)
{
    internal string Species => Option.Species;

    internal long Most => Option.Most;

    internal long Wood => Option.Wood;

    internal long Width => Option.Width;
}
