using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Pile;

/// <summary>A stretch of an offcut's width.</summary>
/// <param name="From">Where it begins, from the edge nearest to the maker when the label is up and the marked end on the left.</param>
/// <param name="To">Where it ends, from that edge; never before <paramref name="From"/>.</param>
public sealed record WidthStretch(Length From, Length To);
