using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans;

/// <summary>Wood of one offcut that one kind of work turns to dust, shavings and end bits.</summary>
/// <param name="Operation">The kind of work.</param>
/// <param name="Volume">How much.</param>
public sealed record WasteRow(Operation Operation, Volume Volume);
