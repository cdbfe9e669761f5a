using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Shops;

/// <summary>What a small shop plausibly has. Common practice, no source.</summary>
internal static class ShopDefaults
{
    internal static readonly ImmutableArray<ClampKind> Clamps =
    [
        new("bar clamp", Length.FromInches(24), 6),
        new("short bar clamp", Length.FromInches(12), 4),
    ];

    internal static readonly ImmutableArray<Length> DrillBits =
    [
        Length.FromInches(1, 8), Length.FromInches(3, 16), Length.FromInches(1, 4), Length.FromInches(5, 16),
        Length.FromInches(3, 8), Length.FromInches(1, 2), Length.FromInches(5, 8), Length.FromInches(3, 4),
    ];

    internal static readonly ImmutableArray<string> RouterBits = ["1/8 in round-over", "45° chamfer", "3/4 in straight"];

    internal static readonly ImmutableArray<string> Blades = ["rip, 24 teeth", "crosscut, 60 teeth"];

    internal static readonly ImmutableArray<RodStock> Rods =
    [
        new("paper-birch", Length.FromInches(1, 4), Length.FromInches(36), 1),
        new("paper-birch", Length.FromInches(3, 8), Length.FromInches(36), 1),
    ];

    internal static readonly ImmutableArray<DayHours> Week =
    [
        new(DayOfWeek.Tuesday, [new(new(18, 30), new(21, 30))]),
        new(DayOfWeek.Wednesday, [new(new(18, 30), new(21, 30))]),
        new(DayOfWeek.Thursday, [new(new(18, 30), new(21, 30))]),
        new(DayOfWeek.Saturday, [new(new(9, 0), new(12, 0)), new(new(13, 0), new(17, 0))]),
    ];

    internal static readonly ImmutableArray<WorkTime> Times =
    [
        new(Operation.FaceGlue, 10, 10, 60),
        new(Operation.RoughCrosscut, 5, 1),
        new(Operation.RoughRip, 5, 2),
        new(Operation.FaceJoint, 5, 2),
        new(Operation.FacePlane, 5, 2),
        new(Operation.EdgeJoint, 5, 2),
        new(Operation.Rip, 5, 2),
        new(Operation.ResawStrips, 10, 4),
        new(Operation.CleanSawnFaces, 5, 2),
        new(Operation.CrosscutStrips, 5, 1),
        new(Operation.PlaneToThickness, 5, 2),
        new(Operation.GlueUp, 10, 15, 60),
        new(Operation.FlattenPanel, 5, 4),
        new(Operation.Resaw, 10, 5),
        new(Operation.PlanePanel, 5, 3),
        new(Operation.TrimWidth, 5, 3),
        new(Operation.CrosscutBlanks, 10, 2),
        new(Operation.CutRods, 5, 1),
        new(Operation.Drill, 10, 4),
        new(Operation.CutLaps, 15, 5),
        new(Operation.CutMitres, 15, 3),
        new(Operation.TreatEdges, 10, 3),
        new(Operation.DryFit, 5, 5),
        new(Operation.Sand, 5, 6),
        new(Operation.Assemble, 10, 15, 60),
        new(Operation.Finish, 10, 5, 1440),
    ];
}
