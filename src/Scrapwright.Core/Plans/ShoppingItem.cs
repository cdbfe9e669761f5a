using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans;

/// <summary>Something to buy.</summary>
/// <param name="What">What it is, in trade words.</param>
/// <param name="Count">How many.</param>
/// <param name="Size">Main size (rod diameter, bit diameter); zero when it has none.</param>
/// <param name="Length">Length; zero when it has none.</param>
/// <param name="Why">Which gifts need it, labels joined by commas.</param>
public sealed record ShoppingItem(string What, int Count, Length Size, Length Length, string Why);
