using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Milling;

/// <summary>What an offcut measures on its way to strips.</summary>
public static class StripMilling
{
    /// <summary>Thickness ladder of an offcut, or a piece cut from it before milling, until both faces are flat.</summary>
    /// <param name="offcut">The single offcut.</param>
    /// <param name="length">Length of the piece when its faces are worked; at most the offcut's.</param>
    /// <param name="width">Width of the piece when its faces are worked; at most the offcut's.</param>
    /// <param name="shop">The shop's allowances.</param>
    /// <param name="spread">One standard deviation of the offcut's own thickness: zero when it was measured, that of <see cref="FaceGluing"/> for a board to be glued first.</param>
    /// <remarks>A surfaced flat face takes no work: rough or warped pieces are face jointed and planed, one surfaced face is only planed opposite.</remarks>
    public static Ladder Thickness(Offcut offcut, Length length, Length width, Shop shop, Length spread = default)
    {
        ArgumentNullException.ThrowIfNull(offcut);
        ArgumentNullException.ThrowIfNull(shop);
        var builder = new LadderBuilder(offcut.Thickness, spread);
        if (NeedsFaceJoint(offcut))
        {
            builder.Take(Operation.FaceJoint, shop.Allowances.FaceJoint, Flattening.Loss(offcut, length, width));
        }

        if (NeedsFacePlane(offcut))
        {
            builder.Take(Operation.FacePlane, shop.Allowances.FacePlane);
        }

        return builder.Build();
    }

    /// <summary>Thickness ladder of one layer when the milled piece is sawn into layers and their sawn faces are planed clean; the same as without for one layer.</summary>
    /// <param name="offcut">The single offcut.</param>
    /// <param name="length">Length of the piece when its faces are worked; at most the offcut's.</param>
    /// <param name="width">Width of the piece when its faces are worked; at most the offcut's.</param>
    /// <param name="layers">How many layers; at least 1.</param>
    /// <param name="shop">The shop's allowances.</param>
    /// <param name="spread">One standard deviation of the offcut's own thickness; zero when it was measured.</param>
    public static Ladder Thickness(Offcut offcut, Length length, Length width, int layers, Shop shop, Length spread = default)
    {
        var whole = Thickness(offcut, length, width, shop, spread);
        if (layers == 1)
        {
            return whole;
        }

        var layer = new LadderBuilder(whole.End, whole.Spread)
            .SawIntoLayers(Operation.ResawStrips, layers, shop.Bandsaw.Kerf)
            .Take(Operation.CleanSawnFaces, shop.Allowances.ResawCleanUp)
            .Build();
        return new Ladder(whole.Start, [.. whole.Rungs, .. layer.Rungs]);
    }

    /// <summary>Spread of the thickness of rough wood once both faces are flat.</summary>
    public static Length RoughSpread(Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        return new LadderBuilder(Length.Zero, Length.Zero)
            .Take(Operation.FaceJoint, shop.Allowances.FaceJoint).Take(Operation.FacePlane, shop.Allowances.FacePlane).Spread;
    }

    /// <summary>Width ladder of a strip of the given rough width: both edges jointed.</summary>
    /// <param name="roughWidth">Width before its edges are worked.</param>
    /// <param name="shop">The shop's allowances.</param>
    public static Ladder Width(Length roughWidth, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        return new LadderBuilder(roughWidth, Length.Zero).Take(Operation.EdgeJoint, shop.Allowances.EdgeJoint, times: 2).Build();
    }

    /// <summary>True when one face must first be made flat: rough or warped.</summary>
    public static bool NeedsFaceJoint(Offcut offcut)
    {
        ArgumentNullException.ThrowIfNull(offcut);
        return offcut.Faces == Faces.Rough || IsWarped(offcut);
    }

    /// <summary>True when the second face must be planed parallel.</summary>
    public static bool NeedsFacePlane(Offcut offcut)
    {
        ArgumentNullException.ThrowIfNull(offcut);
        return offcut.Faces != Faces.BothSurfaced || IsWarped(offcut);
    }

    /// <summary>True when it is cupped, bowed or twisted.</summary>
    public static bool IsWarped(Offcut offcut)
    {
        ArgumentNullException.ThrowIfNull(offcut);
        return offcut.Cup > Length.Zero || offcut.Bow > Length.Zero || offcut.Twist > Length.Zero;
    }
}
