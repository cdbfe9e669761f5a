using Scrapwright.Core.Measures;

namespace Scrapwright.Planning.Cutting;

/// <summary>Bars of one length to cut from.</summary>
/// <param name="Length">Length of one bar; above zero.</param>
/// <param name="Price">What one bar costs, in any whole unit; above zero.</param>
/// <param name="Available">How many there are; null for as many as are wanted.</param>
internal sealed record BarStock(Length Length, long Price, int? Available = null);
