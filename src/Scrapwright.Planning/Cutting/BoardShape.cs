namespace Scrapwright.Planning.Cutting;

/// <summary>A part as it can lie on the board, a kerf added to both sides.</summary>
/// <param name="Part">Index of the part.</param>
/// <param name="IsTurned">Whether it lies across the grain.</param>
/// <param name="Length">Along the grain. [marks]</param>
/// <param name="Width">Across the grain. [marks]</param>
internal readonly record struct BoardShape(int Part, bool IsTurned, long Length, long Width);
