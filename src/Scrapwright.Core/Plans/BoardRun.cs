using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans;

/// <summary>One strip of an offcut from which a run of solid parts is crosscut.</summary>
/// <param name="Gift">The gift it is for.</param>
/// <param name="Run">Mark of the run in the gift's product.</param>
/// <param name="Piece">Id of the strip.</param>
/// <param name="Offcut">Label of the single offcut it comes from.</param>
/// <param name="RoughWidth">Width it was given in the offcut before milling: its share that is used up.</param>
/// <param name="Width">Net width expected after both edges are jointed.</param>
/// <param name="Length">Length when the parts are crosscut from it.</param>
/// <param name="Thickness">Thickness expected after milling, before it is planed to the parts' thickness.</param>
public sealed record BoardRun(string Gift, string Run, string Piece, string Offcut, Length RoughWidth, Length Width, Length Length, Length Thickness)
{
    /// <summary>Into how many layers its wood was sawn; 1 for none. It uses up that share of the offcut's thickness.</summary>
    public int Layers { get; init; } = 1;
}
