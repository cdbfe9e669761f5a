using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Sheets;

/// <summary>One rod with the pieces cut from it, in order from one end, true to scale along its length.</summary>
public static class RodDrawing
{
    /// <summary>Draws one rod.</summary>
    /// <param name="rod">The rod.</param>
    /// <param name="plan">The plan it is of.</param>
    /// <param name="widthMm">Width of the drawing, 80 or more. [mm]</param>
    public static Drawing Draw(RodUse rod, Plan plan, double widthMm = 180)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Draw(rod, new PlanFacts(plan, []), widthMm);
    }

    internal static Drawing Draw(RodUse rod, PlanFacts facts, double widthMm)
    {
        ArgumentNullException.ThrowIfNull(rod);
        var sizes = facts.Sizes;
        var kerf = facts.Shop.TableSaw.Kerf;
        var scale = DrawingScale.Fit(rod.Length, Length.Zero, widthMm - 4, 1);
        var pen = new Pen();
        var head = pen.Text(0, 4.4, rod.Id, 12, true).RightMm + 3;
        pen.Text(head, 4.4, Typesetting.Shorten(
            $"{SpeciesTable.NameOf(rod.Species)} rod Ø {sizes.Of(rod.Diameter)}, {sizes.Of(rod.Length)} long · {(rod.Bought ? "to buy" : "on hand")} · left over {sizes.Of(rod.Left)}",
            9, false, widthMm - head), 9);
        const double Top = 7;
        const double High = 6;
        pen.Box(new(2, Top, rod.Length.Millimetres / scale, High), Ink.ThinDashed);
        double x = 2;
        foreach (var id in rod.Pieces)
        {
            var length = facts.Last(id)?.Length ?? Length.Zero;
            var frame = new Frame(x, Top, length.Millimetres / scale, High);
            pen.Box(frame, Ink.Medium);
            var text = sizes.Of(length);
            if (Typesetting.WidthMm(text, 9, true) + 1 <= frame.WidthMm) pen.Text(frame.Middle.XMm, Top + High - 1.8, text, 9, true, Side.Middle);
            x += (length + kerf).Millimetres / scale;
        }

        return new(widthMm, Top + High + 1, $"Rod {rod.Id}", $"{rod.Id}: {string.Join("; ", rod.Pieces)}.", [new Mark.Group($"rod {rod.Id}", pen.Marks)]);
    }
}
