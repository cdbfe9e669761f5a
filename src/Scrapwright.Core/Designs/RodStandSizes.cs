using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Designs;

/// <summary>
/// Geometry of the stand of two plates and four rods; docs/designs.md has the figure. The stack lies in the middle of the plate. The two
/// front rods stand beside it, so that it slides in between them; the two rear rods stand behind it and stop it.
/// </summary>
internal sealed record RodStandSizes(StackedSet Set, Length Clearance, Length HeadRoom, Length PlateThickness, Length Rod, Length Inset, Length? StoppedDepth)
{
    /// <summary>Side of a plate: stack, and on each side clearance, half a rod and the inset of its middle.</summary>
    internal Length Plate => Set.Size + (Clearance * 2) + Rod + (Inset * 2);

    /// <summary>Middle of a rod from the other edge of its corner: one whole rod lies beside the stack, flush with its end.</summary>
    internal Length FarInset => Inset + Clearance + Rod;

    internal Length HoleDepth => StoppedDepth ?? PlateThickness;

    /// <summary>Between the plates.</summary>
    internal Length Room => Set.Height + HeadRoom;

    internal Length RodLength => Room + (HoleDepth * 2);

    /// <summary>Between the two front rods: what the stack passes through.</summary>
    internal Length Opening => Plate - (Inset * 2) - Rod;

    /// <summary>Middle of the front holes to that of the rear ones, across the grain.</summary>
    internal Length BetweenRodsAcross => Plate - Inset - FarInset;

    /// <summary>Wood between a hole and the plate's edge.</summary>
    internal Length Wall => Inset - Rod.Divide(2, Rounding.Up);

    /// <summary>
    /// The greatest clearance with which no square slips out at a side. A square, however turned, is at least its side wide; between the
    /// front and the rear rod of a side there is √((size + clearance)² + (clearance + rod)²) − rod, which is less than the side as long as
    /// clearance × (size + clearance + rod) &lt; size × rod. This is a little stricter: size × rod / (size + 2 × rod), rounded down.
    /// </summary>
    internal Length MostClearance =>
        Length.FromPicometres((long)(Area.Of(Set.Size, Rod).SquarePicometres / (Set.Size + (Rod * 2)).Picometres));

    /// <summary>Front left, front right, rear left, rear right; the lower edge is the front. The pattern is the same turned over left to right, so both plates are alike.</summary>
    internal ImmutableArray<Hole> Holes =>
    [
        HoleAt(Inset, FarInset),
        HoleAt(Plate - Inset, FarInset),
        HoleAt(FarInset, Plate - Inset),
        HoleAt(Plate - FarInset, Plate - Inset),
    ];

    private Hole HoleAt(Length fromEnd, Length fromEdge) => new(fromEnd, fromEdge, Rod, HoleDepth, FromInside: true);
}
