using Scrapwright.Core.Measures;

namespace Scrapwright.Planning.Search;

/// <summary>A segment that thickness and stations allow, with what it gives and costs.</summary>
/// <param name="Segment">The segment; it names neither glue-up nor run yet.</param>
/// <param name="Species">Key of its species.</param>
/// <param name="Needed">Length it takes.</param>
/// <param name="NetWidth">Net width of its lane.</param>
/// <param name="Most">The most there can be in one glue-up or of alike runs.</param>
/// <param name="Wood">Rough volume it uses up, mm³ rounded up.</param>
internal sealed record SegmentOption(Segment Segment, string Species, Length Needed, Length NetWidth, long Most, long Wood)
{
    /// <summary>Number of its lane and stretch in the problem.</summary>
    internal required int Place { get; init; }

    /// <summary>Length it takes with one kerf, on the grid of lengths, rounded up.</summary>
    internal required long Marks { get; init; }

    /// <summary>
    /// What it adds to the width of a glue-up once what its edges' spread asks for is taken off, on the grid of widths, rounded down: strips that share edges
    /// count as if all that could lie in one glue-up lay there. Zero for a run of solid parts.
    /// </summary>
    internal long Filling { get; init; }

    /// <summary>Net width of its lane, on the grid of widths, rounded down.</summary>
    internal required long Width { get; init; }
}
