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
    /// <summary>Least shared length of the strips: blanks, kerfs between them, both ends squared.</summary>
    public Length Overlap =>
        CrosscutYield.Needed(Blanks, Part.Length, Shop.TableSaw.Kerf) + (Shop.Allowances.EndTrim.Mean * 2);

    /// <summary>Thickness of panel or layer when it comes from the planer: finished thickness and both faces' sanding.</summary>
    public Length PlanedThickness => Part.Thickness + (Shop.Allowances.Sand.Mean * 2);

    /// <summary>Expected thickness that strips, known with the given spread, must have when glued so that every layer reaches its size with the asked chance.</summary>
    /// <param name="stripSpread">One standard deviation of the thinnest strip's thickness.</param>
    public Length StripThickness(Length stripSpread)
    {
        var margin = Chance.Margin(ThicknessBuilder(Length.Zero, stripSpread).Spread, Shop.ConfidencePercent);
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
    public Ladder WidthLadder(Length roughWidth, int strips) =>
        WidthBuilder(roughWidth, strips).WorkTo(Operation.TrimWidth, Part.Width).Build();

    /// <summary>Chance, in thousandths rounded down, that width and thickness both hold.</summary>
    public int ChancePerMille(Length strips, Length stripSpread, Length roughWidth, int stripCount)
    {
        var thickness = ThicknessBuilder(strips, stripSpread);
        var width = WidthBuilder(roughWidth, stripCount);
        return (int)Math.Floor(1000
            * Chance.OfAtLeast(thickness.Size, thickness.Spread, PlanedThickness)
            * Chance.OfAtLeast(width.Size, width.Spread, Part.Width));
    }

    /// <summary>
    /// Expected sum of net widths that a glue-up of so many strips must have: <see cref="WidthBase"/> + strips × <see cref="WidthPerStrip"/>.
    /// The spread grows with the root of the number of strips; the tangent at five strips is never below the root, so the margin is never too small.
    /// </summary>
    public Length RoughWidth(int strips) => WidthBase + (WidthPerStrip * strips);

    /// <summary>The part of <see cref="RoughWidth(int)"/> that does not depend on the number of strips.</summary>
    public Length WidthBase =>
        Part.Width + Shop.Allowances.WidthTrim.Mean
        + Chance.Margin(Shop.Allowances.WidthTrim.Spread, Shop.ConfidencePercent)
        + Times(StripMargin, Math.Sqrt(5) / 2);

    /// <summary>The part of <see cref="RoughWidth(int)"/> that each strip adds.</summary>
    public Length WidthPerStrip => Times(StripMargin, 1 / (2 * Math.Sqrt(5)));

    private Length CleanUp => Layers > 1 ? Shop.Allowances.ResawCleanUp.Mean : Length.Zero;

    private Length StripMargin => Chance.Margin(StripMilling.Width(Part.Width, Shop).Spread, Shop.ConfidencePercent);

    private static Length Times(Length length, double factor) =>
        Length.FromPicometres((long)Math.Ceiling(length.Picometres * factor));

    private LadderBuilder ThicknessBuilder(Length strips, Length stripSpread)
    {
        var builder = new LadderBuilder(strips, stripSpread).Take(Operation.FlattenPanel, Shop.Allowances.PanelFlatten);
        return Layers == 1
            ? builder
            : builder.SawIntoLayers(Operation.Resaw, Layers, Shop.Bandsaw.Kerf).Take(Operation.PlanePanel, Shop.Allowances.ResawCleanUp);
    }

    private LadderBuilder WidthBuilder(Length roughWidth, int strips)
    {
        var spread = StripMilling.Width(Part.Width, Shop).Spread;
        return new LadderBuilder(roughWidth, Times(spread, Math.Sqrt(strips))).Take(Operation.TrimWidth, Shop.Allowances.WidthTrim);
    }
}
