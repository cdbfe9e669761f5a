namespace Scrapwright.Core.Plans.Chances;

/// <summary>How likely the strip of a run gives its solid parts.</summary>
/// <param name="Gift">The gift.</param>
/// <param name="Run">Mark of the run.</param>
/// <param name="Piece">Id of the strip.</param>
/// <param name="Sizes">The chances.</param>
public sealed record BoardChance(string Gift, string Run, string Piece, SizeChances Sizes);
