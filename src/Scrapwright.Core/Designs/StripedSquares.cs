using System.Collections.Immutable;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Designs;

/// <summary>A set of equal striped squares, each cut from a glue-up.</summary>
public sealed class StripedSquares : DesignFamily
{
    /// <inheritdoc/>
    public override string Key => "striped-squares";

    /// <inheritdoc/>
    public override string Title => "Striped squares";

    /// <inheritdoc/>
    public override string Summary => "A set of equal squares with stripes of different woods.";

    /// <inheritdoc/>
    public override ImmutableArray<DesignParameter> Parameters { get; } =
        [.. SquareSet.Parameters, PanelLook.SpeciesParameter, .. PanelLook.Parameters, .. EdgeChoice.Parameters];

    /// <inheritdoc/>
    public override DesignOutcome Derive(ImmutableSortedDictionary<string, string> options, DesignContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        var reader = new DesignOptions(Parameters, options, context.Shop.Unit);
        var set = SquareSet.Read(reader);
        var wish = PanelLook.Read(reader, PanelLook.Species);
        var edge = EdgeChoice.Read(reader);
        if (reader.AreFine)
        {
            edge.RequireWithin(set.Thickness, reader);
            wish.RequireFit(set.Size, reader, context.Shop);
        }

        return reader.AreFine ? new DesignOutcome.Derived(Make(set, wish, edge, reader)) : reader.Refused();
    }

    private Product Make(StackedSet set, PanelWish wish, EdgeChoice edge, DesignOptions reader) => new()
    {
        Family = Key,
        Summary = $"{set.Count} striped {(set.Count == 1 ? "square" : "squares")}, {reader.Show(set.Size)}",
        Parts = [SquareSet.PartOf(set, wish, edge)],
        Set = set,
        Outside = (set.Size, set.Size, set.Height),
        Assembly =
        [
            .. edge.Steps([SquareSet.Key], "the squares"),
            new(Operation.Sand, Station.Sanding, [SquareSet.Key], "Sand both faces and the edges to the last grit.", []),
            new(Operation.Finish, Station.Finishing, [SquareSet.Key], "Put finish on all sides. Let the squares dry standing on edge.", []),
        ],
        Cautions = edge.IsRouted
            ? ["Rout the squares on a table with a push block as wide as they are; never hold one with the fingers beside the bit."]
            : [],
    };
}
