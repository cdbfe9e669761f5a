using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans;

/// <summary>Two thin offcuts glued face to face; from then on the board is milled like an offcut of its own.</summary>
/// <param name="Label">What is written on it: the labels of its offcuts with a plus sign between.</param>
/// <param name="Upper">Label of the single offcut on top.</param>
/// <param name="Lower">Label of the single offcut below.</param>
/// <param name="UpperThickness">Thickness of the upper one with its inner face flat.</param>
/// <param name="LowerThickness">Thickness of the lower one with its inner face flat.</param>
/// <param name="Length">Length that both have from the marked end.</param>
/// <param name="Width">Width that both have from the lower edge.</param>
/// <param name="Thickness">Thickness of the board once glued, where it is thinnest.</param>
/// <param name="ClampsNeeded">How many clamps close it over its whole face.</param>
public sealed record FacedBoard(
    string Label, string Upper, string Lower, Length UpperThickness, Length LowerThickness, Length Length, Length Width, Length Thickness, int ClampsNeeded)
{
    /// <summary>True when an offcut is one of its two.</summary>
    public bool IsOf(string offcut) => Upper == offcut || Lower == offcut;
}
