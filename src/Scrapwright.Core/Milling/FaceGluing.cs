using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Milling;

/// <summary>
/// Two offcuts glued face to face: marked ends and lower edges flush, grain the same way, inner faces flat. Only one wood with itself: woods that move differently
/// warp a laminated board. Common practice, no source.
/// </summary>
/// <param name="Upper">The single offcut on top.</param>
/// <param name="Lower">The single offcut below.</param>
/// <param name="Shop">The shop.</param>
public sealed record FaceGluing(Offcut Upper, Offcut Lower, Shop Shop)
{
    /// <summary>Stands between the labels of the two offcuts in the label of their board; in no label of the pile.</summary>
    public const char Sign = '+';

    /// <summary>What is written on the board.</summary>
    public string Label => $"{Upper.Label}{Sign}{Lower.Label}";

    /// <summary>Thickness of the upper offcut with its inner face flat.</summary>
    public Length UpperThickness => Inner(Upper).End;

    /// <summary>Thickness of the lower offcut with its inner face flat.</summary>
    public Length LowerThickness => Inner(Lower).End;

    /// <summary>Thickness of both as they lie in the pile: what the board uses up of it.</summary>
    public Length RoughThickness => Upper.Thickness + Lower.Thickness;

    /// <summary>One standard deviation of the board's thickness when it comes out of the clamps.</summary>
    public Length Spread => Length.FromPicometres((long)Math.Ceiling(Math.Sqrt(Square(Inner(Upper).Spread) + Square(Inner(Lower).Spread))));

    /// <summary>Clamps that close the whole face: in a row along one edge as many as an edge glue-up of that length, in two rows where the board is wider than half the spacing. Common practice, no source.</summary>
    public int ClampsNeeded => Clamping.Needed(Length.Min(Upper.Length, Lower.Length), Shop) * (Length.Min(Upper.Width, Lower.Width) * 2 > Shop.ClampSpacing ? 2 : 1);

    /// <summary>True when two different offcuts are of one wood, stations and clamps can do it, and wood is left.</summary>
    public bool IsAllowed =>
        Upper.Label != Lower.Label && Upper.Species == Lower.Species && MayBeJointed(Upper) && MayBeJointed(Lower)
        && Clamping.WidestWith(ClampsNeeded, Shop) >= UpperThickness + LowerThickness;

    /// <summary>
    /// The board as an offcut of its own. Its thickness is what is left everywhere once both inner faces are flat: flattening one face of a warped piece takes the whole
    /// hollow (see <see cref="Flattening"/>), so its outer faces are still rough but cost no more than any flat rough board's.
    /// </summary>
    public Offcut Board
    {
        get
        {
            var (length, width) = (Length.Min(Upper.Length, Lower.Length), Length.Min(Upper.Width, Lower.Width));
            var areSurfaced = !StripMilling.NeedsFacePlane(Upper) && !StripMilling.NeedsFacePlane(Lower);
            return new Offcut
            {
                Label = Label,
                Species = Upper.Species,
                Length = length,
                Width = width,
                Thickness = UpperThickness + LowerThickness,
                Faces = areSurfaced ? Faces.BothSurfaced : Faces.Rough,
                Rings = Upper.Rings == Lower.Rings ? Upper.Rings : RingOrientation.Unknown,
                Defects = [.. Upper.Defects.Concat(Lower.Defects).Select(d => Within(d, length, width)).OfType<Defect>().Distinct()],
            };
        }
    }

    /// <summary>The gluing that a board's label names; null when it is no board's label or an offcut of it is not there.</summary>
    /// <param name="label">A label.</param>
    /// <param name="offcuts">The single offcuts of the pile by label.</param>
    /// <param name="shop">The shop.</param>
    public static FaceGluing? Find(string label, IReadOnlyDictionary<string, Offcut> offcuts, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(offcuts);
        return label.Split(Sign) is [var upper, var lower] && offcuts.TryGetValue(upper, out var one) && offcuts.TryGetValue(lower, out var other)
            ? new FaceGluing(one, other, shop) : null;
    }

    /// <summary>The ladder of one offcut until its inner face is flat; no rung when it is surfaced and flat already.</summary>
    /// <param name="offcut">One of the two.</param>
    public Ladder Inner(Offcut offcut)
    {
        ArgumentNullException.ThrowIfNull(offcut);
        var builder = new LadderBuilder(offcut.Thickness, Length.Zero);
        return StripMilling.NeedsFaceJoint(offcut)
            ? builder.Take(Operation.FaceJoint, Shop.Allowances.FaceJoint, Flattening.Loss(offcut, offcut.Length, offcut.Width)).Build()
            : builder.Build();
    }

    private bool MayBeJointed(Offcut offcut)
    {
        var thickness = Inner(offcut).End;
        return thickness.IsPositive
            && (!StripMilling.NeedsFaceJoint(offcut) || StationRules.Rule(Operation.FaceJoint, offcut.Length, offcut.Width, thickness, Shop) is not StationRuling.Refused);
    }

    /// <summary>What of a defect lies in the board; null when it lies beside it.</summary>
    private static Defect? Within(Defect defect, Length length, Length width)
    {
        var isBeside = defect.From >= length || (defect.Across is { } across && across.From >= width);
        return isBeside ? null : defect with
        {
            To = Length.Min(defect.To, length),
            Across = defect.Across is { } stretch ? stretch with { To = Length.Min(stretch.To, width) } : null,
        };
    }

    private static double Square(Length length) => (double)length.Picometres * length.Picometres;
}
