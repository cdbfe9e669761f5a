using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Designs;

/// <summary>An opening of a product and what has to go in and out of it in every season. Sizes are those of the day it is fitted.</summary>
public sealed record Fit
{
    /// <summary>Name in files, unique within the product.</summary>
    public required string Key { get; init; }

    /// <summary>Where it is: between the front rods.</summary>
    public required string Title { get; init; }

    /// <summary>What goes in, in words: a square.</summary>
    public required string HeldTitle { get; init; }

    /// <summary>What the opening is made of; the sizes add up to it. The first is the one that changes when the opening is made wider.</summary>
    public required ImmutableArray<Extent> Holder { get; init; }

    /// <summary>What goes in; the sizes add up to it. Parts of the gift that <see cref="HeldFrom"/> says.</summary>
    public required ImmutableArray<Extent> Held { get; init; }

    /// <summary>True when it may be put in with its grain along the opening as well as across it.</summary>
    public bool HeldTurns { get; init; }

    /// <summary>Where it comes from.</summary>
    public required HeldFrom HeldFrom { get; init; }

    /// <summary>Label of the other gift; empty unless <see cref="HeldFrom"/> is <see cref="HeldFrom.OtherGift"/>.</summary>
    public string HeldGift { get; init; } = "";

    /// <summary>Least clearance wanted in any month, both sides together.</summary>
    public required Length Least { get; init; }

    /// <summary>Most clearance wanted in any month, both sides together; null when it may be as loose as it likes.</summary>
    public Length? Most { get; init; }

    /// <summary>The option that sets the clearance; null for none.</summary>
    public FitOption? Option { get; init; }

    /// <summary>The opening when fitted.</summary>
    public Length Opening => Length.Sum(Holder.Select(e => e.Size));

    /// <summary>What goes in, when fitted.</summary>
    public Length HeldSize => Length.Sum(Held.Select(e => e.Size));

    /// <summary>Opening less what goes in, when fitted.</summary>
    public Length Clearance => Opening - HeldSize;
}
