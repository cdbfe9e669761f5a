using System.Collections.Immutable;

namespace Scrapwright.Core.Designs;

/// <summary>A thing that can be made: a family with some of its parameters set. Files in <c>designs/</c> hold one each.</summary>
public sealed record Design
{
    /// <summary>Name in files, lower case with hyphens; unique.</summary>
    public required string Key { get; init; }

    /// <summary>Name on screens and paper.</summary>
    public required string Title { get; init; }

    /// <summary>Key of the family, one of <see cref="DesignCatalogue.Families"/>.</summary>
    public required string Family { get; init; }

    /// <summary>Parameters that differ from the family's defaults, by key, as text.</summary>
    public ImmutableSortedDictionary<string, string> Options { get; init; } = ImmutableSortedDictionary<string, string>.Empty;
}
