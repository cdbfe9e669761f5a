using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Pile;

/// <summary>A number in an entry line that may be a size or a count.</summary>
/// <param name="Start">Where it begins, from 0.</param>
/// <param name="End">Where it ends, behind its unit.</param>
/// <param name="Value">The length, in the bare unit if it has none.</param>
/// <param name="HadUnit">Whether a unit was written.</param>
/// <param name="Metric">Whether it is read back in millimetres.</param>
/// <param name="Whole">The number when it is whole and has no unit; −1 otherwise.</param>
/// <param name="Joined">Whether an x joins it to the number before.</param>
internal readonly record struct WrittenSize(int Start, int End, Length Value, bool HadUnit, bool Metric, int Whole, bool Joined)
{
    /// <summary>Which size the words say it is; null when they do not.</summary>
    public EntryPart? Named { get; init; }

    public bool IsCount => Whole is >= 1 and <= EntryReader.MostPieces;
}
