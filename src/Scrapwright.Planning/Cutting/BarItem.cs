using Scrapwright.Core.Measures;

namespace Scrapwright.Planning.Cutting;

/// <summary>Pieces of one length to cut from bars.</summary>
/// <param name="Length">Length of one piece; above zero.</param>
/// <param name="Count">How many are wanted; at least 1.</param>
internal sealed record BarItem(Length Length, int Count);
