using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar.Worth;

/// <summary>Something on the shopping list with its price.</summary>
/// <param name="Item">What to buy.</param>
/// <param name="Price">What one costs.</param>
/// <param name="Cost">What all of them cost, in the shop's currency, exact.</param>
public sealed record ItemWorth(ShoppingItem Item, Price Price, decimal Cost);
