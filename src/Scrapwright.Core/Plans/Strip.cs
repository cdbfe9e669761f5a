using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans;

/// <summary>One strip of a glue-up, in its place.</summary>
/// <param name="Piece">Id of the piece.</param>
/// <param name="Offcut">Label of the single offcut it comes from.</param>
/// <param name="RoughWidth">Width it was given in the offcut before milling: its share that is used up.</param>
/// <param name="Width">Net width expected when glued.</param>
/// <param name="Length">Length when glued.</param>
/// <param name="Thickness">Thickness expected after milling, before the glue-up's strips are planed alike.</param>
public sealed record Strip(string Piece, string Offcut, Length RoughWidth, Length Width, Length Length, Length Thickness)
{
    /// <summary>Into how many layers its wood was sawn before gluing; 1 for none. It uses up that share of the offcut's thickness.</summary>
    public int Layers { get; init; } = 1;

    /// <summary>Whether its heart side lies up; null when it may lie as it comes.</summary>
    public bool? HeartUp { get; init; }

    /// <summary>
    /// Piece of its sister in the glue-up: the layer that lay beside it in the stick both were sawn from, cut from the same stretch. Empty for none. Sisters name each other;
    /// named only where the gift wishes book-matched strips.
    /// </summary>
    public string Sister { get; init; } = "";

    /// <summary>Whether it is turned over about its long edge, marked end staying where it is: one of two sisters is, so that both faces of the saw cut between them lie up.</summary>
    public bool TurnedOver { get; init; }
}
