using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Sheets;

/// <summary>
/// One part with grain from left to right, true to scale: holes, half-lap slots and mitres with dimensions from the part's own edges. It is seen on its
/// face, or, where mitres or slots go into its thickness, on its edge with the outer face down.
/// </summary>
public static class PartDrawing
{
    private const double TierMm = 7;
    private const double TextPt = 10;

    /// <summary>True when the part has something to lay out.</summary>
    public static bool Draws(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return !part.Holes.IsEmpty || !part.Notches.IsEmpty || part.Mitres != MitredEnds.None;
    }

    /// <summary>Draws one part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="marks">What is written on its copies, for example A1 A2; may be empty.</param>
    /// <param name="shop">The shop, for its unit.</param>
    /// <param name="widthMm">Width of the drawing, 80 or more. [mm]</param>
    /// <param name="heightMm">Height that the part itself may take. [mm]</param>
    public static Drawing Draw(Part part, string marks, Shop shop, double widthMm = 180, double heightMm = 110)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(marks);
        ArgumentNullException.ThrowIfNull(shop);
        var sizes = new Sizes(shop);
        var alongs = Alongs(part);
        var acrosses = Acrosses(part);
        var left = 4.0;
        var high = OnEdge(part) ? part.Thickness : part.Width;
        var right = ((acrosses.Length + 1) * (acrosses.Append(high).Max(l => Typesetting.WidthMm(sizes.Of(l), TextPt, true)) + 4)) + 4;
        var scale = DrawingScale.Fit(part.Length, high, widthMm - left - right, heightMm);
        var pen = new Pen();
        var title = marks.Length > 0 ? $"{part.Title} · {marks}" : part.Title;
        var head = pen.Text(0, 4.6, Typesetting.Shorten(title, 12, true, widthMm * 0.6), 12, true).RightMm + 3;
        pen.Text(head, 4.6, Typesetting.Shorten($"{DrawingScale.Words(scale)} · {(OnEdge(part) ? "on edge, outside down" : "on its face")} · {sizes.Box(part.Length, part.Width, part.Thickness)}", 8.5, false, widthMm - head), 8.5);
        var frame = new Frame(left, 8, part.Length.Millimetres / scale, high.Millimetres / scale);
        Outline(pen, part, frame, scale);
        foreach (var hole in part.Holes) Hole(pen, hole, frame, scale);

        var y = frame.BottomMm + TierMm;
        foreach (var along in alongs)
        {
            Dimension.Level(pen, frame.LeftMm, frame.LeftMm + (along.Millimetres / scale), y, frame.BottomMm, sizes.Of(along), TextPt);
            y += TierMm;
        }

        Dimension.Level(pen, frame.LeftMm, frame.RightMm, y, frame.BottomMm, sizes.Of(part.Length), TextPt);
        var x = frame.RightMm + 5;
        foreach (var across in acrosses)
        {
            var text = Dimension.Upright(pen, frame.BottomMm - (across.Millimetres / scale), frame.BottomMm, x, frame.RightMm, sizes.Of(across), TextPt);
            x = text.RightMm + 2.6;
        }

        Dimension.Upright(pen, frame.TopMm, frame.BottomMm, x, frame.RightMm, sizes.Of(high), TextPt);
        y += 3.2;
        foreach (var line in Notes(part, sizes))
        {
            y += pen.Paragraph(left, y, widthMm - left, line, TextPt) + 0.4;
        }

        var summary = $"{title}, {sizes.Box(part.Length, part.Width, part.Thickness)}. {string.Join(" ", Notes(part, sizes))}";
        return new(widthMm, y + 1, part.Title, summary, [new Mark.Group($"part {part.Key}", pen.Marks)]);
    }

    // Each distance once, shortest first, from the left end and from the lower edge.
    private static Length[] Alongs(Part part) =>
        [.. part.Holes.Select(h => h.FromEnd).Concat(part.Notches.SelectMany(n => new[] { n.FromEnd, n.FromEnd + n.Opening })).Distinct().Order()];

    private static Length[] Acrosses(Part part) =>
        [.. part.Holes.Select(h => h.FromEdge)
            .Concat(part.Notches.Select(n => n.OnUpperEdge ? (OnEdge(part) ? part.Thickness : part.Width) - n.Depth : n.Depth)).Distinct().Order()];

    private static bool OnEdge(Part part) => part.Mitres != MitredEnds.None || part.Notches.Any(n => n.AcrossFace);

    private static IEnumerable<string> Notes(Part part, Sizes sizes)
    {
        foreach (var group in part.Holes.GroupBy(h => (h.Diameter, h.Depth, h.FromInside)))
        {
            var depth = group.Key.Depth >= part.Thickness ? "through" : $"{sizes.Of(group.Key.Depth)} deep";
            yield return $"{group.Count()} × Ø {sizes.Of(group.Key.Diameter)} {depth}{(group.Key.FromInside ? ", from the inside face" : "")}.";
        }

        foreach (var group in part.Notches.GroupBy(n => (n.Opening, n.Depth, n.OnUpperEdge)))
            yield return $"{group.Count()} × slot {sizes.Of(group.Key.Opening)} wide, {sizes.Of(group.Key.Depth)} deep, {(OnEdge(part) ? "across the outer face" : group.Key.OnUpperEdge ? "upper edge" : "lower edge")}.";

        if (part.Mitres != MitredEnds.None)
            yield return $"Mitre 45°: {part.Mitres switch { MitredEnds.Left => "left end", MitredEnds.Right => "right end", _ => "both ends" }}. Length is over the long side.";
    }

    private static void Hole(Pen pen, Hole hole, Frame frame, int scale)
    {
        var middle = new Spot(frame.LeftMm + (hole.FromEnd.Millimetres / scale), frame.BottomMm - (hole.FromEdge.Millimetres / scale));
        var radius = hole.Diameter.Millimetres / 2 / scale;
        pen.Add(new Mark.Group("hole", [new Mark.Circle(middle, radius, Ink.Medium, Ink.White)]));
        var arm = radius + 1.5;
        pen.Line(middle.XMm - arm, middle.YMm, middle.XMm + arm, middle.YMm, Ink.Thin);
        pen.Line(middle.XMm, middle.YMm - arm, middle.XMm, middle.YMm + arm, Ink.Thin);
    }

    // The outline with its slots open; on edge, mitred ends lean inwards from the long outer side at the bottom.
    private static void Outline(Pen pen, Part part, Frame frame, int scale)
    {
        var bevel = part.Thickness.Millimetres / scale;
        var leftBevel = part.Mitres is MitredEnds.Left or MitredEnds.Both ? bevel : 0;
        var rightBevel = part.Mitres is MitredEnds.Right or MitredEnds.Both ? bevel : 0;
        var corners = new List<Spot> { new(frame.LeftMm, frame.BottomMm) };
        foreach (var notch in part.Notches.Where(n => !n.OnUpperEdge).OrderBy(n => n.FromEnd)) corners.AddRange(Slot(notch, frame.BottomMm, -1));
        corners.Add(new(frame.RightMm, frame.BottomMm));
        corners.Add(new(frame.RightMm - rightBevel, frame.TopMm));
        foreach (var notch in part.Notches.Where(n => n.OnUpperEdge).OrderByDescending(n => n.FromEnd)) corners.AddRange(Slot(notch, frame.TopMm, 1).Reverse());
        corners.Add(new(frame.LeftMm + leftBevel, frame.TopMm));
        pen.Add(new Mark.Group("outline", [new Mark.Polygon([.. corners], Ink.Medium, Ink.White)]));

        Spot[] Slot(Notch notch, double edgeMm, int inward)
        {
            var from = frame.LeftMm + (notch.FromEnd.Millimetres / scale);
            var to = from + (notch.Opening.Millimetres / scale);
            var floor = edgeMm + (inward * notch.Depth.Millimetres / scale);
            return [new(from, edgeMm), new(from, floor), new(to, floor), new(to, edgeMm)];
        }
    }
}
