using Scrapwright.Core.Measures;

namespace Scrapwright.Planning.Cutting;

/// <summary>A rectangle wanted from a board.</summary>
/// <param name="Length">Along the grain; above zero.</param>
/// <param name="Width">Across the grain; above zero.</param>
/// <param name="Value">What one is worth, in any whole unit; above zero.</param>
/// <param name="Count">How many are wanted at most; null for as many as fit.</param>
/// <param name="MayTurn">Whether it may lie across the grain as well.</param>
internal sealed record BoardPart(Length Length, Length Width, long Value, int? Count = null, bool MayTurn = false);
