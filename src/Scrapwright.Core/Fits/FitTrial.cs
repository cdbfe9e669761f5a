using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Fits;

/// <summary>A fit to try without a plan: a lid in a box, a drawer in its case, a square in a stand.</summary>
public sealed record FitTrial
{
    /// <summary>What the opening is made of; the sizes add up to it. The first is the one made wider or narrower; it grows as it does now whatever its size.</summary>
    public required ImmutableArray<MovingWood> Holder { get; init; }

    /// <summary>What goes in; the sizes add up to it. Of several stretches across the grain each is a strip of one panel.</summary>
    public required ImmutableArray<MovingWood> Held { get; init; }

    /// <summary>True when what goes in may also lie with its grain along the opening.</summary>
    public bool HeldTurns { get; init; }

    /// <summary>The air of the shop where it is fitted.</summary>
    public required Climate FittedIn { get; init; }

    /// <summary>The month it is fitted, 1 to 12; null for the driest of the shop's year, from which wood swells most.</summary>
    public int? FittedMonth { get; init; }

    /// <summary>The air where it will live.</summary>
    public required Climate LivesIn { get; init; }

    /// <summary>Least clearance wanted in any month, both sides together.</summary>
    public Length Least { get; init; }

    /// <summary>Most clearance wanted in any month, both sides together; null when it may be as loose as it likes.</summary>
    public Length? Most { get; init; }
}
