using Scrapwright.Core.Measures;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>A length of one lane of a pattern, used for a glue-up or for a run of solid parts.</summary>
/// <param name="Pattern">Place of the pattern in the problem.</param>
/// <param name="Lane">Which lane.</param>
/// <param name="Run">Which clear stretch.</param>
/// <param name="Panel">Place of the glue-up, or −1.</param>
/// <param name="Solid">Place of the run of solid parts, or −1.</param>
internal readonly record struct Segment(int Pattern, int Lane, int Run, int Panel, int Solid)
{
    /// <summary>True when it is glued or cut already.</summary>
    internal bool IsDoneIn(Problem problem) => Panel >= 0 ? problem.Panels[Panel].Done is not null : problem.Runs[Solid].Done is not null;

    /// <summary>Length it takes along its lane.</summary>
    internal Length NeededIn(Problem problem) => Panel >= 0 ? problem.Panels[Panel].Needs.Overlap : problem.Runs[Solid].Needs.Length;

    /// <summary>Place of the gift it serves; the first of those that share its glue-up.</summary>
    internal int GiftIn(Problem problem) => Panel >= 0 ? problem.Panels[Panel].GiftIndex : problem.Runs[Solid].GiftIndex;

    /// <summary>Places of all gifts it serves.</summary>
    internal IEnumerable<int> GiftsIn(Problem problem) => Panel >= 0 ? problem.Panels[Panel].Shares.Select(s => s.GiftIndex) : [problem.Runs[Solid].GiftIndex];
}
