using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans.Choices;

/// <summary>One lane of an offcut that was cut.</summary>
/// <param name="RoughWidth">Its share of the offcut's width before milling.</param>
/// <param name="Pieces">What it was crosscut into, from the marked end, a kerf between; empty when nothing of this lane is used up yet.</param>
public sealed record MilledLane(Length RoughWidth, ImmutableArray<MilledPiece> Pieces);
