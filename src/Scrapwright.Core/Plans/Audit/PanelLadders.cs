using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>
/// The ladders of a glue-up worked out once more. Spreads of independent work add as squares; what is set by a machine has none.
/// Every spread is rounded up to a picometre.
/// </summary>
internal static class PanelLadders
{
    /// <summary>One standard deviation of an offcut's thickness once its faces are flat and, when it was sawn into layers, the sawn ones clean.</summary>
    /// <param name="offcut">The offcut or board.</param>
    /// <param name="before">One standard deviation of its thickness before: zero for an offcut, which was measured.</param>
    /// <param name="layers">Layers it was sawn into.</param>
    /// <param name="shop">The shop.</param>
    public static Length FaceSpread(Offcut offcut, Length before, int layers, Shop shop)
    {
        var warped = !offcut.Cup.IsZero || !offcut.Bow.IsZero || !offcut.Twist.IsZero;
        var variance = Square(before);
        if (warped || offcut.Faces == Faces.Rough)
        {
            variance += Square(shop.Allowances.FaceJoint.Spread);
        }

        if (warped || offcut.Faces != Faces.BothSurfaced)
        {
            variance += Square(shop.Allowances.FacePlane.Spread);
        }

        return layers > 1 ? Root(Square(Root(variance)) + Square(shop.Allowances.ResawCleanUp.Spread)) : Root(variance);
    }

    /// <summary>Thickness from the strips to one finished layer, and size and spread just before it is planed to size.</summary>
    public static (List<Rung> Rungs, Length Size, Length Spread) Thickness(Length strips, Length spread, int layers, Part part, Shop shop)
    {
        var rungs = new List<Rung>();
        var size = strips;
        var variance = Square(spread);
        Take(Operation.FlattenPanel, shop.Allowances.PanelFlatten);
        if (layers > 1)
        {
            var layer = (size - (shop.Bandsaw.Kerf * (layers - 1))).Divide(layers, Rounding.Down);
            rungs.Add(new Rung(Operation.Resaw, size - layer, layer, Root(variance)));
            size = layer;
            Take(Operation.PlanePanel, shop.Allowances.ResawCleanUp);
        }

        var before = (size, Root(variance));
        var sanding = shop.Allowances.Sand.Mean * 2;
        var planed = part.Thickness + sanding;
        rungs.Add(new Rung(Operation.PlanePanel, size - planed, planed, Length.Zero));
        rungs.Add(new Rung(Operation.Sand, sanding, part.Thickness, Root(Square(shop.Allowances.Sand.Spread) * 2)));
        return (rungs, before.size, before.Item2);

        void Take(Operation operation, Allowance allowance)
        {
            size -= allowance.Mean;
            variance += Square(allowance.Spread);
            rungs.Add(new Rung(operation, allowance.Mean, size, Root(variance)));
        }
    }

    /// <summary>Width from the strips to trimmed, and size and spread just before the last trim.</summary>
    public static (List<Rung> Rungs, Length Size, Length Spread) Width(Length rough, double stripsSpreadMm, Part part, Shop shop)
    {
        var trim = shop.Allowances.WidthTrim;
        var together = Length.FromPicometres((long)Math.Ceiling(stripsSpreadMm * 1e9));
        var size = rough - trim.Mean;
        var spread = Root(Square(together) + Square(trim.Spread));
        return (
            [
                new Rung(Operation.TrimWidth, trim.Mean, size, spread),
                new Rung(Operation.TrimWidth, size - part.Width, part.Width, Length.Zero),
            ],
            size,
            spread);
    }

    private static double Square(Length length) => (double)length.Picometres * length.Picometres;

    private static Length Root(double variance) => Length.FromPicometres((long)Math.Ceiling(Math.Sqrt(variance)));
}
