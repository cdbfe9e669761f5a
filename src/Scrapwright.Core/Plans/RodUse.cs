using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans;

/// <summary>One rod and what is cut from it.</summary>
/// <param name="Id">Its name on sheets: R1, R2 …</param>
/// <param name="Species">Key of the species.</param>
/// <param name="Diameter">Diameter.</param>
/// <param name="Length">Length as sold.</param>
/// <param name="Bought">True when it must be bought, false when it is on hand.</param>
/// <param name="Pieces">Ids of the pieces cut from it, in order from one end.</param>
/// <param name="Left">What is left of it.</param>
public sealed record RodUse(string Id, string Species, Length Diameter, Length Length, bool Bought, ImmutableArray<string> Pieces, Length Left);
