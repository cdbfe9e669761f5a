using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Designs;

/// <summary>A stand of two U-shaped sides, each cut from a single board with the grain running on round its corners, half-lapped onto two cross bars.</summary>
public sealed class UStand : DesignFamily
{
    private const string Clearance = "clearance";
    private const string HeadRoom = "head-room";
    private const string Depth = "depth";
    private const string Board = "board-thickness";
    private const string SetIn = "set-in";
    private const string BarHeight = "bar-height";
    private const string BarThickness = "bar-thickness";
    private const string BarInset = "bar-inset";
    private const string Fit = "fit";
    private const string Keys = "keys";

    // Common practice, no source: shorter grain between or beside slots breaks out.
    private static readonly Length LeastWood = Length.FromInches(1, 4);

    private static readonly Length LeastDepth = Length.FromInches(1, 2);

    /// <inheritdoc/>
    public override string Key => "u-stand";

    /// <inheritdoc/>
    public override string Title => "Stand with U-shaped sides";

    /// <inheritdoc/>
    public override string Summary => "Two U-shaped sides with running grain on two half-lapped cross bars; holds a set of squares.";

    /// <inheritdoc/>
    public override ImmutableArray<DesignParameter> Parameters { get; } =
    [
        .. SquareSet.HolderParameters,
        new(Clearance, "Clearance", ParameterKind.Length, "1/16 in", "Gap between stack and uprights, each side.", [], "1/64 in", "1 in"),
        new(HeadRoom, "Rise above the stack", ParameterKind.Length, "1/4 in", "How far the uprights stand above the stack.", [], "0 in", "6 in"),
        new(Depth, "Depth of a side", ParameterKind.Length, "1 in", "Width of its board, front to back.", [], "1/2 in", "6 in"),
        new(Board, "Thickness of the sides", ParameterKind.Length, "3/8 in", "After sanding.", [], "1/4 in", "1 in"),
        new(SetIn, "Set in", ParameterKind.Length, "1/2 in", "From the front or back of the stack to the side.", [], "1/4 in", "6 in"),
        new(BarHeight, "Height of the bars", ParameterKind.Length, "3/4 in", "What they show below the sides are the feet.", [], "1/4 in", "3 in"),
        new(BarThickness, "Thickness of the bars", ParameterKind.Length, "3/8 in", "After sanding.", [], "1/4 in", "1 in"),
        new(BarInset, "Inset of the bars", ParameterKind.Length, "1/2 in", "From the inside of an upright to the bar.", [], "1/4 in", "6 in"),
        new(Fit, "Fit of the half-laps", ParameterKind.Length, "0.1 mm", "How much wider a slot is than what goes into it.", [], "0 in", "1/32 in"),
        new(Keys, "Keys in each corner", ParameterKind.Count, "2", "Slips of wood across each mitre.", [], "0", "4"),
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
        var sizes = new UStandSizes(
            set, reader.ReadLength(Clearance), reader.ReadLength(HeadRoom), reader.ReadLength(Depth), reader.ReadLength(Board), reader.ReadLength(SetIn),
            reader.ReadLength(BarHeight), reader.ReadLength(BarThickness), reader.ReadLength(BarInset), reader.ReadLength(Fit),
            reader.ReadCount(Keys), context.Shop.TableSaw.Kerf);
        var species = reader.ReadSpecies(PanelLook.Species);
        var wish = PanelLook.Read(reader, PanelLook.SquareSpecies);
        var edge = EdgeChoice.Read(reader);
        var fit = StandFit.Read(reader, context, makes);
        if (!reader.AreFine) return reader.Refused();
        Check(sizes, edge, makes, reader, context);
        if (makes) wish.RequireFit(set.Size, reader, context.Shop);
        if (!reader.AreFine) return reader.Refused();

        var parts = UStandParts.Of(sizes, species, edge);
        return new DesignOutcome.Derived(new Product
        {
            Family = Key,
            Summary = $"stand of two U-shaped sides{(makes ? " with" : " for")} {SquareSet.InWords(set, reader)}",
            Parts = makes ? parts.Add(SquareSet.PartOf(set, wish, edge)) : parts,
            Runs = UStandParts.Runs,
            Joints = UStandParts.Joints(sizes),
            Fits = UStandParts.Fits(sizes, fit, new(Clearance, 2)),
            Assembly = UStandAssembly.Steps(sizes, edge, makes, context.Shop),
            Set = set,
            Outside = sizes.Outside,
            Cautions =
            [
                "The parts are short: clamp each in the sled for laps and mitres, and keep the fingers out of the line of the blade.",
                "The uprights hold the stack left and right only; front and back stay open so that a square can be taken out.",
            ],
        });
    }

    private static void Check(UStandSizes sizes, EdgeChoice edge, bool makes, DesignOptions reader, DesignContext context)
    {
        CheckSides(sizes, reader, context);
        CheckBars(sizes, reader, context);
        reader.Require(
            sizes.BarHeight >= sizes.Board, BarHeight, DesignMessages.AtLeast(reader.ShowLeast(sizes.Board), "the bars carry the sides and are cut half their thickness deep"));

        var most = sizes.KeyThickness.IsPositive ? Math.Max(0, sizes.Depth.CountOf(sizes.KeyThickness * 2) - 1) : sizes.Keys;
        reader.Require(sizes.Keys <= most, Keys, DesignMessages.AtMost($"{most}", "each key needs its own thickness of wood beside it"));
        edge.RequireWithin(makes ? Length.Min(sizes.Board, sizes.Set.Thickness) : sizes.Board, reader);
    }

    /// <summary>Two sides and the wood between them fit under the squares.</summary>
    private static void CheckSides(UStandSizes sizes, DesignOptions reader, DesignContext context)
    {
        const string Reason = "the two sides would collide under the squares";
        if (sizes.BetweenSides >= LeastWood) return;
        var mostDepth = (sizes.Set.Size - (sizes.SetIn * 2) - LeastWood).Divide(2, Rounding.Down) - sizes.Fit;
        var mostSetIn = (sizes.Set.Size - (sizes.BarOpening * 2) - LeastWood).Divide(2, Rounding.Down);
        if (reader.IsGiven(SetIn) && mostSetIn >= LeastWood) reader.Refuse(SetIn, DesignMessages.AtMost(reader.ShowMost(mostSetIn), Reason));
        else if (mostDepth >= LeastDepth) reader.Refuse(Depth, DesignMessages.AtMost(reader.ShowMost(mostDepth), Reason));
        else SquareSet.RefuseSize(reader, context, ((sizes.SetIn + sizes.BarOpening) * 2) + LeastWood, Reason);
    }

    /// <summary>Two bars and the wood between their slots fit between the uprights.</summary>
    private static void CheckBars(UStandSizes sizes, DesignOptions reader, DesignContext context)
    {
        const string Reason = "the bars would collide under the squares";
        if (sizes.BetweenBars >= LeastWood) return;
        var most = (sizes.Inner - (sizes.BaseOpening * 2) - LeastWood).Divide(2, Rounding.Down);
        if (most >= LeastWood) reader.Refuse(BarInset, DesignMessages.AtMost(reader.ShowMost(most), Reason));
        else SquareSet.RefuseSize(reader, context, ((sizes.BarInset + sizes.BaseOpening - sizes.Clearance) * 2) + LeastWood, Reason);
    }
}
