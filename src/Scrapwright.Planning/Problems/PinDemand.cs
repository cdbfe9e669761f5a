namespace Scrapwright.Planning.Problems;

/// <summary>A gift is made only when a glue-up of a part has a strip of an offcut.</summary>
/// <param name="GiftIndex">Place of the gift in the problem.</param>
/// <param name="Part">Key of the panel part.</param>
/// <param name="OffcutIndex">Place of the offcut in the problem; −1 when the pile has none of that label.</param>
internal sealed record PinDemand(int GiftIndex, string Part, int OffcutIndex)
{
    /// <summary>Id of the piece of the offcut that it must be, milled already; empty for any strip of it.</summary>
    internal string Piece { get; init; } = "";
}
