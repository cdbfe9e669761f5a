using Scrapwright.Core.Designs;

namespace Scrapwright.Planning.Problems;

/// <summary>What a gift gets from a glue-up.</summary>
/// <param name="GiftIndex">Place of the gift in the problem.</param>
/// <param name="Part">The panel part.</param>
/// <param name="Count">How many copies of it.</param>
internal sealed record PanelShare(int GiftIndex, Part Part, int Count);
