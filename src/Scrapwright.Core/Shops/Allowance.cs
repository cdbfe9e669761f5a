using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Shops;

/// <summary>Wood that one pass of work takes away.</summary>
/// <param name="Mean">What it takes on average; zero or more.</param>
/// <param name="Spread">One standard deviation of it; zero or more.</param>
public sealed record Allowance(Length Mean, Length Spread);
