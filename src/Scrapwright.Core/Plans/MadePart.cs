namespace Scrapwright.Core.Plans;

/// <summary>One copy of a part and the piece it is in the end.</summary>
/// <param name="Part">Key of the part.</param>
/// <param name="Copy">Which copy, from 1.</param>
/// <param name="Piece">Id of the piece.</param>
public sealed record MadePart(string Part, int Copy, string Piece);
