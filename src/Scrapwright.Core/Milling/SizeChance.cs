using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Milling;

/// <summary>Chance that panels and boards meet their sizes, all together. docs/science/chance.md has the model.</summary>
public static class SizeChance
{
    /// <summary>The chances of panels and boards that are all wanted, such as those of one gift.</summary>
    /// <param name="panels">The glue-ups.</param>
    /// <param name="boards">The boards.</param>
    /// <param name="shop">The shop's allowances.</param>
    /// <remarks>Allowances are taken as normal; error of the numbers below 0.0005. Strips with the same pass share what it took, within a panel and between panels.</remarks>
    public static SizeOdds Of(IReadOnlyList<WorkedPanel> panels, IReadOnlyList<WorkedBoard> boards, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(panels);
        ArgumentNullException.ThrowIfNull(boards);
        ArgumentNullException.ThrowIfNull(shop);
        return new SizeOdds
        {
            Length = panels.Aggregate(1.0, (all, p) => all * Math.Pow(LengthShare(p.Overlap, p.Needs.LeastOverlap, shop), p.Needs.Layers))
                * boards.Aggregate(1.0, (all, b) => all * LengthShare(b.Length, b.Needs.LeastLength, shop)),
            Width = WidthOdds.Of([.. panels.Select(p => Width(p, shop)), .. boards.Select(Width)]),
            Thickness = ThicknessOdds.Of([.. panels.Select(p => Thickness(p, shop)), .. boards.Select(Thickness)]),
        };
    }

    /// <summary>Spread of squaring both ends.</summary>
    internal static Length EndsSpread(Shop shop) => LadderBuilder.Together(shop.Allowances.EndTrim.Spread, 2);

    /// <summary>Chance that a panel is at least so much wider, before its last trim, than its part.</summary>
    internal static double WidthShare(WorkedPanel panel, Shop shop, double overMm)
    {
        var demand = Width(panel, shop);
        return WidthOdds.Of([demand with { RoomMm = demand.RoomMm - overMm }]);
    }

    /// <summary>Chance that each of a panel's layers is at least so much thicker, before its last planing, than it must be.</summary>
    internal static double ThicknessShare(WorkedPanel panel, Shop shop, double overMm)
    {
        var demand = Thickness(panel, shop);
        return ThicknessOdds.Of([demand with { Rooms = [.. demand.Rooms.Select(r => r with { Mm = r.Mm - (overMm * demand.Layers) })] }]);
    }

    private static double LengthShare(Length length, Length needed, Shop shop) => Chance.OfAtLeast(length, EndsSpread(shop), needed);

    private static WidthOdds.Demand Width(WorkedPanel panel, Shop shop) => new(
        (Length.Sum(panel.Strips.Select(s => s.Width)) - shop.Allowances.WidthTrim.Mean - panel.Needs.Part.Width).Millimetres,
        shop.Allowances.WidthTrim.Spread.Millimetres,
        panel.Needs.Layers,
        [.. panel.Strips.Select(s => (s.Edges.Key, s.Edges.Spread.Millimetres))]);

    private static WidthOdds.Demand Width(WorkedBoard board) => new(
        (board.Strip.Width - board.Needs.PartWidth).Millimetres, 0, 1, [(board.Strip.Edges.Key, board.Strip.Edges.Spread.Millimetres)]);

    private static ThicknessOdds.Demand Thickness(WorkedPanel panel, Shop shop)
    {
        var least = panel.Needs.LeastStripThickness;
        return new ThicknessOdds.Demand(
            shop.Allowances.PanelFlatten.Spread.Millimetres,
            shop.Allowances.ResawCleanUp.Spread.Millimetres,
            panel.Needs.Layers,
            [.. panel.Strips.Select(s => Room(s, least))]);
    }

    private static ThicknessOdds.Demand Thickness(WorkedBoard board) => new(0, 0, 1, [Room(board.Strip, board.Needs.PlanedThickness)]);

    private static ThicknessOdds.Room Room(WorkedStrip strip, Length least) =>
        new(strip.Faces.Key, strip.Faces.Spread.Millimetres, (strip.Thickness - least).Millimetres)
        {
            Stem = strip.Before?.Key ?? "",
            StemMm = strip.Before?.Spread.Millimetres ?? 0,
        };
}
