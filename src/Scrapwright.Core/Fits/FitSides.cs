using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Fits;

/// <summary>Both sides of a fit with the wood each is of.</summary>
/// <param name="Holder">The opening; the first term is the one that changes when it is made wider.</param>
/// <param name="Held">What goes in.</param>
internal sealed record FitSides(ImmutableArray<MovingTerm> Holder, ImmutableArray<MovingTerm> Held)
{
    internal Length Opening { get; } = Length.Sum(Holder.Select(t => t.Size));

    internal Length HeldSize { get; } = Length.Sum(Held.Select(t => t.Size));
}
