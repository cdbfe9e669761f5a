using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Designs;

/// <summary>Parts, grain runs and joints of the stand with U-shaped sides.</summary>
internal static class UStandParts
{
    internal const string Left = "left-upright";
    internal const string Base = "base";
    internal const string Right = "right-upright";
    internal const string Bar = "bar";
    private const string LapRemedy = "Glue only the middle of each lap, make the sides narrower, or give the slots more fit.";

    /// <summary>Side A from one board, side B from another, in the order left upright, base, right upright; each bar from a board of its own.</summary>
    internal static ImmutableArray<GrainRun> Runs { get; } =
    [
        Side("A", 1),
        Side("B", 2),
        new("C", [new PartRef(Bar, 1, "C1")]),
        new("D", [new PartRef(Bar, 2, "D1")]),
    ];

    internal static ImmutableArray<Part> Of(UStandSizes sizes, ImmutableArray<string> species, EdgeChoice edge)
    {
        var upright = new Part
        {
            Key = Left,
            Title = "left upright",
            Kind = PartKind.Solid,
            Length = sizes.Upright,
            Width = sizes.Depth,
            Thickness = sizes.Board,
            Count = 2,
            // Along the board the left upright comes first, so its lower end is its right end.
            Mitres = MitredEnds.Right,
            Edge = edge.Treatment,
            EdgeSize = edge.Size,
            Species = species,
        };
        return
        [
            upright,
            upright with
            {
                Key = Base,
                Title = "base",
                Length = sizes.Base,
                Mitres = MitredEnds.Both,
                Notches = sizes.BaseNotches,
                // Routed edges would leave a gap where the bars meet the base.
                Edge = EdgeTreatment.Eased,
                EdgeSize = Length.Zero,
            },
            upright with { Key = Right, Title = "right upright", Mitres = MitredEnds.Left },
            new Part
            {
                Key = Bar,
                Title = "cross bar",
                Kind = PartKind.Solid,
                Length = sizes.Bar,
                Width = sizes.BarHeight,
                Thickness = sizes.BarThickness,
                Count = 2,
                Notches = sizes.BarNotches,
                Species = species,
            },
        ];
    }

    internal static ImmutableArray<Joint> Joints(UStandSizes sizes) =>
    [
        new(sizes.Keys == 0 ? "mitre" : "mitre with keys", [Left, Base, Right], 4, [new("length of the mitre along the face", sizes.Board), .. Keys(sizes)])
        {
            // The corner runs across the same board on both sides of the mitre: both move alike.
            Glued = [new(Left, GrainDirection.Width, Base, GrainDirection.Width, sizes.Depth), new(Right, GrainDirection.Width, Base, GrainDirection.Width, sizes.Depth)],
        },
        new("half-lap", [Base, Bar], 4,
        [
            new("slot in the base, along it", sizes.BaseOpening),
            new("slot in the base, deep", sizes.Laps.InBase),
            new("slot in the bar, along it", sizes.BarOpening),
            new("slot in the bar, deep", sizes.Laps.InBar),
            new("fit clearance", sizes.Fit),
        ])
        {
            // Crossed boards: each lap is glued over the width of one and along the grain of the other.
            Glued =
            [
                new(Base, GrainDirection.Width, Bar, GrainDirection.Along, sizes.Depth) { Remedy = LapRemedy },
                new(Bar, GrainDirection.Thickness, Base, GrainDirection.Along, sizes.BarThickness) { Remedy = LapRemedy },
            ],
        },
        new("opening for the set", [Left, Right, Base], 2,
        [
            new("between the uprights", sizes.Inner),
            new("gap to the uprights, each side", sizes.Clearance),
            new("uprights above the base", sizes.Upright - sizes.Board),
        ]),
    ];

    /// <summary>The base lies with its grain along the opening and does not move it; the uprights' outsides stand flush with its ends, so what they swell takes from it.</summary>
    internal static ImmutableArray<Fit> Fits(UStandSizes sizes, StandFit fit, FitOption option) =>
    [
        fit.Beside("uprights", "between the uprights", sizes.Set, option,
        [
            new(Base, GrainDirection.Along, sizes.Base),
            new(Left, GrainDirection.Thickness, -sizes.Board),
            new(Right, GrainDirection.Thickness, -sizes.Board),
        ]),
    ];

    private static IEnumerable<JointSize> Keys(UStandSizes sizes)
    {
        if (sizes.Keys == 0) yield break;
        yield return new JointSize("key thickness, as the saw kerf", sizes.KeyThickness);
        yield return new JointSize("key slot, deep from the corner", sizes.KeyDepth);
        foreach (var (i, middle) in sizes.KeyMiddles.Index()) yield return new JointSize($"middle of key {i + 1} from the front edge", middle);
    }

    private static GrainRun Side(string mark, int copy) =>
        new(mark, [new PartRef(Left, copy, mark + "1"), new PartRef(Base, copy, mark + "2"), new PartRef(Right, copy, mark + "3")]);
}
