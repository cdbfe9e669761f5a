using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Calendar;

/// <summary>Something to buy, and by when.</summary>
/// <param name="Item">What to buy.</param>
/// <param name="Before">When the first task begins that needs it; null when none is left that does.</param>
public sealed record BuyBy(ShoppingItem Item, DateTimeOffset? Before);
