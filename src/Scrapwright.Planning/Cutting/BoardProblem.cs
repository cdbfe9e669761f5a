using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Planning.Cutting;

/// <summary>Cutting one clear rectangular board by guillotine cuts: each cut goes right through the piece it is made in.</summary>
/// <param name="Length">Of the board, along the grain; above zero.</param>
/// <param name="Width">Of the board, across the grain; above zero.</param>
/// <param name="Parts">What is wanted.</param>
/// <param name="Kerf">Width of every cut; zero or more. The last cut may run off the edge.</param>
internal sealed record BoardProblem(Length Length, Length Width, ImmutableArray<BoardPart> Parts, Length Kerf);
