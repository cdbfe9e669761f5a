using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Milling;

/// <summary>One rung of a ladder: what an operation takes and what is left.</summary>
/// <param name="Operation">The operation.</param>
/// <param name="Taken">What it is expected to take.</param>
/// <param name="After">Expected size afterwards.</param>
/// <param name="Spread">One standard deviation of that size.</param>
public sealed record Rung(Operation Operation, Length Taken, Length After, Length Spread);
