using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Milling;

/// <summary>What a glue-up must measure to give so many blanks and layers of a panel part.</summary>
/// <param name="Part">The panel part.</param>
/// <param name="Blanks">Blanks along the panel.</param>
/// <param name="Layers">Layers resawn from it.</param>
/// <param name="Shop">The shop.</param>
public sealed record PanelNeeds(Part Part, int Blanks, int Layers, Shop Shop)
{
    /// <summary>Edges of five strips: where the tangent of <see cref="RoughWidth(int)"/> touches the root.</summary>
    private const int UsualEdges = 10;

    /// <summary>What is held in hand; when nothing is said, nothing. <see cref="GiftMargins"/> gives what a gift's chance asks for.</summary>
    public SizeMargins Margins { get; init; } = SizeMargins.None;

    /// <summary>Least shared length of the strips: blanks, kerfs between them, both ends squared, and what is held in hand for those, rounded up to a mark of the rule.</summary>
    public Length Overlap =>
        CrosscutYield.Needed(Blanks, Part.Length, Shop.TableSaw.Kerf) + (Shop.Allowances.EndTrim.Mean * 2)
        + Margins.ForEnds(Shop);

    /// <summary>Thickness of panel or layer when it comes from the planer: finished thickness and both faces' sanding.</summary>
    public Length PlanedThickness => Part.Thickness + (Shop.Allowances.Sand.Mean * 2);

    /// <summary>Expected thickness that a strip, known with the given spread, must have when glued so that every layer reaches its size with the margin in hand.</summary>
    /// <param name="stripSpread">One standard deviation of the strip's thickness.</param>
    public Length StripThickness(Length stripSpread)
    {
        var margin = Chance.Margin(ThicknessBuilder(Length.Zero, stripSpread).Spread, Margins.Thickness);
        var layer = PlanedThickness + CleanUp + margin;
        return (layer * Layers) + (Shop.Bandsaw.Kerf * (Layers - 1)) + Shop.Allowances.PanelFlatten.Mean;
    }

    /// <summary>Thickness from the glued strips to one finished layer.</summary>
    public Ladder ThicknessLadder(Length strips, Length stripSpread) =>
        ThicknessBuilder(strips, stripSpread)
            .WorkTo(Operation.PlanePanel, PlanedThickness)
            .Take(Operation.Sand, Shop.Allowances.Sand, times: 2)
            .Build();

    /// <summary>Width from the glued strips to trimmed.</summary>
    /// <param name="roughWidth">Sum of the strips' net widths.</param>
    /// <param name="stripsSpread">One standard deviation of that sum.</param>
    public Ladder WidthLadder(Length roughWidth, Length stripsSpread) =>
        new LadderBuilder(roughWidth, stripsSpread).Take(Operation.TrimWidth, Shop.Allowances.WidthTrim).WorkTo(Operation.TrimWidth, Part.Width).Build();

    /// <summary>
    /// Expected sum of net widths that a glue-up of so many strips, both edges of each jointed alone, must have: <see cref="WidthBase"/> + edges × <see cref="WidthPerEdge"/>.
    /// The spread grows with the root of the number of edges; its tangent at five strips is never below the root, so the margin is never too small.
    /// </summary>
    public Length RoughWidth(int strips) => WidthBase + (WidthPerEdge * (2 * strips));

    /// <summary>The part of <see cref="RoughWidth(int)"/> that does not depend on the number of strips.</summary>
    public Length WidthBase => Part.Width + Shop.Allowances.WidthTrim.Mean + Chance.Margin(UsualSpread, Margins.Width * (1 - (UsualEdges * ShareOfAnEdge / 2)));

    /// <summary>The part of <see cref="RoughWidth(int)"/> that each jointed edge adds; edges whose spreads add up in full, not as squares, count as often as the square of their number.</summary>
    public Length WidthPerEdge => Chance.Margin(UsualSpread, Margins.Width * ShareOfAnEdge / 2);

    /// <summary>Spread of the width of a glue-up of five strips, before it is trimmed.</summary>
    internal Length UsualSpread => new LadderBuilder(Length.Zero, Length.Zero)
        .Take(Operation.EdgeJoint, Shop.Allowances.EdgeJoint, times: UsualEdges).Take(Operation.TrimWidth, Shop.Allowances.WidthTrim).Spread;

    /// <summary>Share of one edge in the square of that spread.</summary>
    private double ShareOfAnEdge => UsualSpread.IsZero ? 0 : Square(Shop.Allowances.EdgeJoint.Spread) / Square(UsualSpread);

    private Length CleanUp => Layers > 1 ? Shop.Allowances.ResawCleanUp.Mean : Length.Zero;

    private LadderBuilder ThicknessBuilder(Length strips, Length stripSpread)
    {
        var builder = new LadderBuilder(strips, stripSpread).Take(Operation.FlattenPanel, Shop.Allowances.PanelFlatten);
        return Layers == 1
            ? builder
            : builder.SawIntoLayers(Operation.Resaw, Layers, Shop.Bandsaw.Kerf).Take(Operation.PlanePanel, Shop.Allowances.ResawCleanUp);
    }

    private static double Square(Length length) => (double)length.Picometres * length.Picometres;
}
