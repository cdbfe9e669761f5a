using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>A board glued face to face, worked out once more from its two offcuts.</summary>
internal sealed class FacedWood
{
    /// <summary>Works it out.</summary>
    /// <param name="stated">What the plan says of it.</param>
    /// <param name="upper">The offcut on top.</param>
    /// <param name="lower">The offcut below.</param>
    /// <param name="shop">The shop.</param>
    public FacedWood(FacedBoard stated, Offcut upper, Offcut lower, Shop shop)
    {
        (Stated, Upper, Lower) = (stated, upper, lower);
        var (length, width) = (upper.Length < lower.Length ? upper.Length : lower.Length, upper.Width < lower.Width ? upper.Width : lower.Width);
        UpperThickness = WithFlatFace(upper, shop);
        LowerThickness = WithFlatFace(lower, shop);
        var jointed = (MustBeJointed(upper) ? 1 : 0) + (MustBeJointed(lower) ? 1 : 0);
        Spread = Length.FromPicometres((long)Math.Ceiling(Math.Sqrt(jointed * (double)shop.Allowances.FaceJoint.Spread.Picometres * shop.Allowances.FaceJoint.Spread.Picometres)));
        ClampsNeeded = (Math.Max(1, ((length.Picometres - 1) / shop.ClampSpacing.Picometres) + 1) + 1) * (width + width > shop.ClampSpacing ? 2 : 1);
        Board = new Offcut
        {
            Label = stated.Label,
            Species = upper.Species,
            Length = length,
            Width = width,
            Thickness = UpperThickness + LowerThickness,
            Faces = IsSurfaced(upper) && IsSurfaced(lower) ? Faces.BothSurfaced : Faces.Rough,
            Rings = upper.Rings == lower.Rings ? upper.Rings : RingOrientation.Unknown,
            Defects = [.. upper.Defects.AddRange(lower.Defects).Where(d => d.From < length && (d.Across is null || d.Across.From < width))],
        };
    }

    /// <summary>What the plan says.</summary>
    public FacedBoard Stated { get; }

    /// <summary>The offcut on top.</summary>
    public Offcut Upper { get; }

    /// <summary>The offcut below.</summary>
    public Offcut Lower { get; }

    /// <summary>Thickness of the upper one with its inner face flat.</summary>
    public Length UpperThickness { get; }

    /// <summary>Thickness of the lower one with its inner face flat.</summary>
    public Length LowerThickness { get; }

    /// <summary>One standard deviation of the board's thickness.</summary>
    public Length Spread { get; }

    /// <summary>Clamps that close its face.</summary>
    public long ClampsNeeded { get; }

    /// <summary>The board as an offcut. Both inner faces are flat, so nothing is left of warp that would cost more thickness.</summary>
    public Offcut Board { get; }

    /// <summary>Rough, or not flat.</summary>
    public static bool MustBeJointed(Offcut offcut) => offcut.Faces == Faces.Rough || IsWarped(offcut);

    private static bool IsWarped(Offcut offcut) => offcut.Cup.IsPositive || offcut.Bow.IsPositive || offcut.Twist.IsPositive;

    private static bool IsSurfaced(Offcut offcut) => offcut.Faces == Faces.BothSurfaced && !IsWarped(offcut);

    private static Length WithFlatFace(Offcut offcut, Shop shop) =>
        MustBeJointed(offcut) ? offcut.Thickness - WarpLoss.Of(offcut, offcut.Length, offcut.Width) - shop.Allowances.FaceJoint.Mean : offcut.Thickness;
}
