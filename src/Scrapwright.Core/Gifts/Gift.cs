using System.Collections.Immutable;

namespace Scrapwright.Core.Gifts;

/// <summary>One design with options, for a recipient, by a date.</summary>
public sealed record Gift
{
    /// <summary>Short name, unique in the list, written on its parts.</summary>
    public required string Label { get; init; }

    /// <summary>Who it is for.</summary>
    public string Recipient { get; init; } = "";

    /// <summary>Recipients who would compare their gifts; empty for none.</summary>
    public string Circle { get; init; } = "";

    /// <summary>Key of the design.</summary>
    public required string Design { get; init; }

    /// <summary>Options that differ from the design's, by parameter key, as text.</summary>
    public ImmutableSortedDictionary<string, string> Options { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>Name of the occasion it is for; empty for none. Its date is when the gift is due, unless <see cref="Due"/> says another.</summary>
    public string Occasion { get; init; } = "";

    /// <summary>The date it is due; null for none, or for that of its occasion.</summary>
    public DateOnly? Due { get; init; }

    /// <summary>1 is made first; 1 to 9.</summary>
    public int Priority { get; init; } = 2;

    /// <summary>The air where it will live: key of a climate or the name of one of the shop's own; empty for the shop's.</summary>
    public string Climate { get; init; } = "";

    /// <summary>Key of its finish; empty for the shop's.</summary>
    public string Finish { get; init; } = "";
}
