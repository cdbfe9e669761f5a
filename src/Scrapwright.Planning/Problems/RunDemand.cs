using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Plans;

namespace Scrapwright.Planning.Problems;

/// <summary>Runs of solid parts alike in size that a gift needs; each comes from a strip of its own.</summary>
/// <param name="Index">Its place in the problem.</param>
/// <param name="GiftIndex">Place of its gift in the problem.</param>
/// <param name="Runs">The runs.</param>
/// <param name="Needs">What the strip of each must measure.</param>
internal sealed record RunDemand(int Index, int GiftIndex, ImmutableArray<GrainRun> Runs, SolidNeeds Needs)
{
    /// <summary>The board whose parts are cut already; null while it is open to the search.</summary>
    internal BoardRun? Done { get; init; }
}
