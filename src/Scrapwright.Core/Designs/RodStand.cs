using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Designs;

/// <summary>A stand of two plates and four rods at their corners that holds a set of squares, open in front.</summary>
public sealed class RodStand : DesignFamily
{
    private const string Plate = "plate";
    private const string Rod = "rod";
    private const string Clearance = "clearance";
    private const string HeadRoom = "head-room";
    private const string PlateThickness = "plate-thickness";
    private const string RodDiameter = "rod-diameter";
    private const string RodInset = "rod-inset";
    private const string Rods = "rods";
    private const string RodDepth = "rod-depth";

    // Common practice, no source: less breaks out beside a bit, or lets it come through.
    private static readonly Length LeastWood = Length.FromInches(1, 8);

    /// <inheritdoc/>
    public override string Key => "rod-stand";

    /// <inheritdoc/>
    public override string Title => "Stand with rods";

    /// <inheritdoc/>
    public override string Summary => "Two plates and four corner rods that hold a set of squares, open in front.";

    /// <inheritdoc/>
    public override ImmutableArray<DesignParameter> Parameters { get; } =
    [
        .. SquareSet.HolderParameters,
        new(Clearance, "Clearance", ParameterKind.Length, "1/16 in", "Gap between stack and rods, each side.", [], "1/64 in", "1 in"),
        new(HeadRoom, "Head room", ParameterKind.Length, "1/2 in", "Room above the stack.", [], "0 in", "6 in"),
        new(PlateThickness, "Thickness of the plates", ParameterKind.Length, "1/2 in", "After sanding.", [], "1/4 in", "2 in"),
        new(RodDiameter, "Diameter of the rods", ParameterKind.Length, "3/8 in", "Rod and drill bit of that size.", [], "1/8 in", "1 in"),
        new(RodInset, "Inset of the rods", ParameterKind.Length, "1/2 in", "Middle of a hole from the nearer edge of the plate.", [], "1/8 in", "3 in"),
        new(Rods, "Holes for the rods", ParameterKind.Choice, "through", "Through: rod ends show outside. Stopped: they do not.", ["through", "stopped"]),
        new(RodDepth, "Depth of stopped holes", ParameterKind.Length, "1/4 in", "Stopped holes only.", [], "1/8 in", "2 in"),
        PanelLook.SpeciesParameter,
        PanelLook.SquareSpeciesParameter,
        .. PanelLook.Parameters,
        .. EdgeChoice.Parameters,
        .. StandFit.Parameters,
    ];

    /// <inheritdoc/>
    public override DesignOutcome Derive(ImmutableSortedDictionary<string, string> options, DesignContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        var reader = new DesignOptions(Parameters, options, context.Shop.Unit);
        var (set, makes) = SquareSet.ReadHeld(reader, context);
        var depth = reader.ReadLength(RodDepth);
        var sizes = new RodStandSizes(
            set, reader.ReadLength(Clearance), reader.ReadLength(HeadRoom), reader.ReadLength(PlateThickness), reader.ReadLength(RodDiameter),
            reader.ReadLength(RodInset), reader.ReadChoice(Rods) == "stopped" ? depth : null);
        var wish = PanelLook.Read(reader, PanelLook.Species);
        var squareWish = wish with { Species = reader.ReadSpecies(PanelLook.SquareSpecies) };
        var edge = EdgeChoice.Read(reader);
        var fit = StandFit.Read(reader, context, makes);
        if (!reader.AreFine) return reader.Refused();
        Check(sizes, edge, reader, context.Shop);
        wish.RequireFit(makes ? set.Size : sizes.Plate, reader, context.Shop);
        if (!reader.AreFine) return reader.Refused();

        var plate = new Part
        {
            Key = Plate,
            Title = "plate",
            Kind = PartKind.Panel,
            Length = sizes.Plate,
            Width = sizes.Plate,
            Thickness = sizes.PlateThickness,
            Count = 2,
            Holes = sizes.Holes,
            Wish = wish,
            Edge = edge.Treatment,
            EdgeSize = edge.Size,
        };
        var rod = new Part
        {
            Key = Rod,
            Title = "rod",
            Kind = PartKind.Rod,
            Length = sizes.RodLength,
            Width = sizes.Rod,
            Thickness = sizes.Rod,
            Count = 4,
        };
        return new DesignOutcome.Derived(new Product
        {
            Family = Key,
            Summary = $"stand of two plates and four rods{(makes ? " with" : " for")} {SquareSet.InWords(set, reader)}",
            Parts = makes ? [plate, rod, SquareSet.PartOf(set, squareWish, edge)] : [plate, rod],
            Joints = Joints(sizes),
            Fits = Fits(sizes, fit),
            Assembly = RodStandAssembly.Steps(sizes, edge, makes, context.Shop),
            Set = set,
            Outside = (sizes.Plate, sizes.Plate, sizes.Room + (sizes.PlateThickness * 2)),
            Cautions = Cautions(sizes, context.Shop, reader),
        });
    }

    private static void Check(RodStandSizes sizes, EdgeChoice edge, DesignOptions reader, Shop shop)
    {
        var leastInset = sizes.Rod.Divide(2, Rounding.Up) + LeastWood;
        reader.Require(sizes.Inset >= leastInset, RodInset, DesignMessages.AtLeast(reader.ShowLeast(leastInset), "the hole needs wood around it"));
        // The rear rods stand one side less one rod apart, middle to middle; below three rods they would leave no room to hold the stack straight.
        var mostRod = sizes.Set.Size.Divide(3, Rounding.Down);
        reader.Require(sizes.Rod <= mostRod, RodDiameter, DesignMessages.AtMost(reader.ShowMost(mostRod), "the rods would collide behind the squares"));
        reader.Require(
            sizes.Clearance <= sizes.MostClearance, Clearance,
            DesignMessages.AtMost(reader.ShowMost(sizes.MostClearance), "a square would slip out between the rods of a side"));
        var mostDepth = sizes.PlateThickness - LeastWood;
        reader.Require(
            sizes.StoppedDepth is not { } depth || depth <= mostDepth, RodDepth, DesignMessages.AtMost(reader.ShowMost(mostDepth), "a stopped hole must not come through"));
        var leastHeadRoom = SquareSet.UnsandedHeight(sizes.Set, shop) - sizes.Set.Height;
        reader.Require(
            sizes.HeadRoom >= leastHeadRoom, HeadRoom, DesignMessages.AtLeast(reader.ShowLeast(leastHeadRoom), "the stand is fitted on squares before sanding"));
        edge.RequireWithin(Length.Min(sizes.PlateThickness, sizes.Set.Thickness), reader);
        if (sizes.Inset >= leastInset) edge.RequireAtMost(sizes.Wall, "it would run into the holes", reader);
    }

    private static ImmutableArray<Joint> Joints(RodStandSizes sizes) =>
    [
        new(sizes.StoppedDepth is null ? "rod in through hole" : "rod in stopped hole", [Plate, Rod], 8,
        [
            new("hole diameter", sizes.Rod),
            new("hole depth", sizes.HoleDepth),
            new("middle of the hole from its nearer edge", sizes.Inset),
            new("middle of the hole from the other edge of its corner", sizes.FarInset),
            new("wood between hole and edge", sizes.Wall),
        ])
        {
            // Both plates lie with their grain the same way, so what the rods tie together moves together.
            Glued =
            [
                new(Plate, GrainDirection.Width, Plate, GrainDirection.Width, sizes.BetweenRodsAcross),
                new(Rod, GrainDirection.Along, Plate, GrainDirection.Thickness, sizes.HoleDepth)
                {
                    Remedy = sizes.StoppedDepth is null ? "Let the rod ends stand back a little: in dry months they show." : "Glue the bottom of the hole only.",
                },
                new(Rod, GrainDirection.Width, Plate, GrainDirection.Along, sizes.Rod) { Remedy = "Take rods that slide in by hand: a tight one can split the plate when it swells." },
            ],
        },
        new("opening for the set", [Plate, Rod], 1,
        [
            new("between the front rods", sizes.Opening),
            new("gap to the rods, each side", sizes.Clearance),
            new("between the plates", sizes.Room),
        ]),
    ];

    // The holes of the front rods lie apart along the grain of the plates; half of each rod stands in the opening. A rod reaches from the
    // bottom of one hole to the bottom of the other, so plates that swell take from the room.
    private static ImmutableArray<Fit> Fits(RodStandSizes sizes, StandFit fit) =>
    [
        fit.Beside("front-rods", "between the front rods", sizes.Set, new(Clearance, 2),
            [new(Plate, GrainDirection.Along, sizes.Opening + sizes.Rod), new(Rod, GrainDirection.Width, -sizes.Rod)]),
        fit.Above("plates", "between the plates", sizes.Set, new(HeadRoom, 1),
            [new(Rod, GrainDirection.Along, sizes.RodLength), new(Plate, GrainDirection.Thickness, -(sizes.HoleDepth * 2), 2)]),
    ];

    private static ImmutableArray<string> Cautions(RodStandSizes sizes, Shop shop, DesignOptions reader)
    {
        var cautions = ImmutableArray.CreateBuilder<string>();
        if (!shop.DrillBits.Contains(sizes.Rod)) cautions.Add($"The shop has no drill bit of {reader.Show(sizes.Rod)}: buy one, or take rods of another diameter.");
        if (sizes.HoleDepth > shop.DrillPress.Stroke) cautions.Add("The holes are deeper than one stroke of the drill press: drill, raise the table, drill on.");
        cautions.Add("Rods are uneven: try one in a hole in scrap before drilling the plates.");
        cautions.Add("Do not hold the short rods by hand at a saw: cut them off the long rod, held in a block with a groove.");
        return cautions.ToImmutable();
    }
}
