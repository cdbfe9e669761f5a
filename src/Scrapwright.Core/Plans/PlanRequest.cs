using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans;

/// <summary>All the facts a plan is made from.</summary>
public sealed record PlanRequest
{
    /// <summary>Name of the workshop, printed on every sheet.</summary>
    public string Workshop { get; init; } = "";

    /// <summary>The shop.</summary>
    public Shop Shop { get; init; } = new();

    /// <summary>The pile; labels are unique.</summary>
    public ImmutableArray<Offcut> Pile { get; init; } = [];

    /// <summary>The gifts; labels are unique.</summary>
    public ImmutableArray<Gift> Gifts { get; init; } = [];

    /// <summary>Designs from files, beside the built-in ones.</summary>
    public ImmutableArray<Design> Designs { get; init; } = [];

    /// <summary>What the maker has decided already.</summary>
    public MakerChoices Choices { get; init; } = new();

    /// <summary>What comes of the design of every gift, in the order of the list.</summary>
    public ImmutableArray<GiftDesign> DeriveDesigns() => GiftDesigns.Derive(Gifts, Designs, Shop);
}
