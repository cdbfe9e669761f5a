using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Shops;

namespace Scrapwright.Storage;

/// <summary>What replaces the workshop, or a part of it: what is null stays as it is.</summary>
public sealed record WorkshopContents
{
    /// <summary>Name of the workshop.</summary>
    public string? Name { get; init; }

    /// <summary>The whole new pile.</summary>
    public ImmutableArray<NewOffcut>? Pile { get; init; }

    /// <summary>The whole new list.</summary>
    public ImmutableArray<Gift>? Gifts { get; init; }

    /// <summary>All occasions.</summary>
    public ImmutableArray<Occasion>? Occasions { get; init; }

    /// <summary>All that was given.</summary>
    public ImmutableArray<GivenGift>? Given { get; init; }

    /// <summary>The shop.</summary>
    public Shop? Shop { get; init; }

    /// <summary>When the shop is worked in.</summary>
    public WorkHours? Hours { get; init; }

    /// <summary>All readings of time.</summary>
    public ImmutableArray<TimeReading>? Times { get; init; }

    /// <summary>All prices.</summary>
    public ImmutableArray<Price>? Prices { get; init; }

    /// <summary>All of the maker's own jigs.</summary>
    public ImmutableArray<Jig>? Jigs { get; init; }

    /// <summary>What the maker has decided.</summary>
    public MakerChoices? Choices { get; init; }

    /// <summary>All designs beside the built-in ones.</summary>
    public ImmutableArray<Design>? Designs { get; init; }
}
