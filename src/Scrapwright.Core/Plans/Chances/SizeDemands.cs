using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans.Chances;

/// <summary>What a panel, or the strip of a run, must still measure at each place where its size is set.</summary>
/// <param name="Widths">Every layer, where it is trimmed.</param>
/// <param name="Thicknesses">Every layer against every strip, where it is planed.</param>
/// <param name="Lengths">Every layer, where its ends are squared.</param>
internal sealed record SizeDemands(ImmutableArray<Demand> Widths, ImmutableArray<Demand> Thicknesses, ImmutableArray<Demand> Lengths)
{
    /// <summary>All of them.</summary>
    public IEnumerable<Demand> All => [.. Widths, .. Thicknesses, .. Lengths];

    /// <summary>One standard deviation of the width of one layer once its edges are clean.</summary>
    public Length WidthSpread { get; init; }

    /// <summary>One standard deviation of the strips' widths together.</summary>
    public Length StripsSpread { get; init; }

    /// <summary>The demands of a panel.</summary>
    public static SizeDemands Of(GlueUp glueUp, Product product, MilledPieces milled, Shop shop)
    {
        var part = product.Parts.First(p => p.Key == glueUp.Part);
        var needs = new PanelNeeds(part, glueUp.Blanks, glueUp.Layers, shop);
        ImmutableArray<(int, double)> edges = [.. glueUp.Strips.SelectMany(s => milled.Width(s.Piece, s.Width).Draws)];
        var over = glueUp.RoughWidth - part.Width - shop.Allowances.WidthTrim.Mean;
        ImmutableArray<Demand> widths =
        [
            .. Enumerable.Range(0, glueUp.Layers).Select(_ => Less(over, edges, milled, shop.Allowances.WidthTrim.Spread)),
        ];
        return new SizeDemands(widths, Thickness(glueUp, needs, milled, shop), [.. Enumerable.Range(0, glueUp.Layers).Select(_ => Ends(glueUp.Overlap - needs.Overlap, milled, shop))])
        {
            StripsSpread = Spread(edges),
            WidthSpread = Spread(widths[0].Draws),
        };
    }

    /// <summary>The demands of the strip of a run.</summary>
    public static SizeDemands Of(BoardRun board, Product product, MilledPieces milled, Shop shop)
    {
        var needs = new SolidNeeds(product.Runs.First(r => r.Mark == board.Run), product.Parts, shop);
        var (width, thickness) = (milled.Width(board.Piece, board.Width), milled.Thickness(board.Piece, board.Thickness));
        return new SizeDemands(
            [new Demand((width.Expected - needs.PartWidth).Millimetres, width.Draws)],
            [new Demand((thickness.Expected - needs.PlanedThickness).Millimetres, thickness.Draws)],
            [Ends(board.Length - needs.Length, milled, shop)]);
    }

    /// <summary>The chance of each size.</summary>
    public SizeChances Chances() => new(JointChance.Of(Widths), JointChance.Of(Thicknesses), JointChance.Of(Lengths));

    /// <summary>
    /// The panel is as thick as the thinnest of its strips really is, less the flattening. When it is sawn, the fence stands at the plan's layer: what the panel
    /// is over or under is in the last one.
    /// </summary>
    private static ImmutableArray<Demand> Thickness(GlueUp glueUp, PanelNeeds needs, MilledPieces milled, Shop shop)
    {
        var flat = milled.NewDraw();
        var flattened = shop.Allowances.PanelFlatten;
        var kerfs = shop.Bandsaw.Kerf * (glueUp.Layers - 1);
        var layer = glueUp.Layers == 1
            ? Length.Zero : (glueUp.Strips.Min(s => s.Thickness) - flattened.Mean - kerfs).Divide(glueUp.Layers, Rounding.Down);
        var gone = flattened.Mean + kerfs + (layer * (glueUp.Layers - 1)) + needs.PlanedThickness;
        var clean = glueUp.Layers == 1 ? new Allowance(Length.Zero, Length.Zero) : shop.Allowances.ResawCleanUp;
        var cleanLast = milled.NewDraw();
        return
        [
            .. glueUp.Strips.Select(s => milled.Thickness(s.Piece, s.Thickness)).Select(t => new Demand(
                (t.Expected - gone - clean.Mean).Millimetres,
                [.. t.Draws, .. Own(flat, flattened.Spread), .. Own(cleanLast, clean.Spread)])),
            .. Enumerable.Range(1, glueUp.Layers - 1).Select(_ => new Demand((layer - clean.Mean - needs.PlanedThickness).Millimetres, Own(milled.NewDraw(), clean.Spread))),
        ];
    }

    private static Demand Ends(Length over, MilledPieces milled, Shop shop) =>
        new(over.Millimetres, [.. Own(milled.NewDraw(), shop.Allowances.EndTrim.Spread), .. Own(milled.NewDraw(), shop.Allowances.EndTrim.Spread)]);

    private static Demand Less(Length over, ImmutableArray<(int, double)> shared, MilledPieces milled, Length own) =>
        new(over.Millimetres, [.. shared, .. Own(milled.NewDraw(), own)]);

    private static ImmutableArray<(int Draw, double SpreadMm)> Own(int draw, Length spread) => spread.IsPositive ? [(draw, spread.Millimetres)] : [];

    private static double Square(double spreadMm) => spreadMm * spreadMm;

    private static Length Spread(ImmutableArray<(int Draw, double SpreadMm)> draws) =>
        Length.FromPicometres((long)Math.Ceiling(1e9 * Math.Sqrt(draws.GroupBy(d => d.Draw).Sum(g => Square(g.Sum(d => d.SpreadMm))))));
}
