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
    /// <summary>Number of strips at which the straight line under the margin of the width touches its root.</summary>
    private const int UsualStrips = 5;

    private const int MostStrips = 12;

    /// <summary>How many glue-ups and boards of the gift share what may go wrong; 1 or more.</summary>
    public int Sharers { get; init; } = 1;

    /// <summary>Least shared length of the strips, nothing in hand: blanks, kerfs between them, both ends squared.</summary>
    public Length LeastOverlap =>
        CrosscutYield.Needed(Blanks, Part.Length, Shop.TableSaw.Kerf) + (Shop.Allowances.EndTrim.Mean * 2);

    /// <summary>Shared length that the strips must have, with its part of the asked chance in hand, to a mark of the rule.</summary>
    public Length Overlap => LeastOverlap + ReadableSize.Up(
        Times(SizeChance.EndsSpread(Shop), Risk.Deviations(AllowedRisk * Risk.OfLength / Layers)), Shop.Unit);

    /// <summary>Thickness of panel or layer when it comes from the planer: finished thickness and both faces' sanding.</summary>
    public Length PlanedThickness => Part.Thickness + (Shop.Allowances.Sand.Mean * 2);

    /// <summary>Least thickness of the strips when glued, nothing in hand.</summary>
    public Length LeastStripThickness =>
        ((PlanedThickness + CleanUp) * Layers) + (Shop.Bandsaw.Kerf * (Layers - 1)) + Shop.Allowances.PanelFlatten.Mean;

    /// <summary>Risk that all of this glue-up may take. [1]</summary>
    public double AllowedRisk => Risk.Allowed(Shop.ConfidencePercent) / Sharers;

    /// <summary>Risk that its width may take. [1]</summary>
    public double WidthRisk => AllowedRisk * Risk.OfWidth;

    /// <summary>Risk that the thickness of one strip may take when all of them are as thin. [1]</summary>
    public double StripRisk => AllowedRisk * Risk.OfThickness / Math.Min(MostStrips, Part.Wish?.MaximumStrips ?? MostStrips);

    /// <summary>Risk that its length takes. [1]</summary>
    public double LengthRisk => Layers * Risk.Of(DeviationsOf(Overlap - LeastOverlap, SizeChance.EndsSpread(Shop)));

    /// <summary>Expected thickness that strips, known with the given spread, must have when glued so that every layer reaches its size with the asked chance.</summary>
    /// <param name="stripSpread">One standard deviation of a strip's thickness.</param>
    public Length StripThickness(Length stripSpread) =>
        LeastStripThickness + Times(SpreadAtStrips(stripSpread), Risk.Deviations(StripRisk / Layers));

    /// <summary>Risk that a strip of that thickness is too thin for a layer. [1]</summary>
    /// <param name="thickness">Expected thickness before strips are planed alike.</param>
    /// <param name="stripSpread">One standard deviation of it.</param>
    public double ThicknessRisk(Length thickness, Length stripSpread) =>
        Layers * Risk.Of(DeviationsOf(thickness - LeastStripThickness, SpreadAtStrips(stripSpread)));

    /// <summary>Thickness from the glued strips to one finished layer.</summary>
    public Ladder ThicknessLadder(Length strips, Length stripSpread)
    {
        var builder = new LadderBuilder(strips, stripSpread).Take(Operation.FlattenPanel, Shop.Allowances.PanelFlatten);
        if (Layers > 1)
        {
            builder.SawIntoLayers(Operation.Resaw, Layers, Shop.Bandsaw.Kerf).Take(Operation.PlanePanel, Shop.Allowances.ResawCleanUp);
        }

        return builder.WorkTo(Operation.PlanePanel, PlanedThickness).Take(Operation.Sand, Shop.Allowances.Sand, times: 2).Build();
    }

    /// <summary>Width from the glued strips to trimmed, as if each had passes of its own.</summary>
    public Ladder WidthLadder(Length roughWidth, int strips) =>
        new LadderBuilder(roughWidth, Times(StripMilling.Width(Part.Width, Shop).Spread, Math.Sqrt(strips)))
            .Take(Operation.TrimWidth, Shop.Allowances.WidthTrim).WorkTo(Operation.TrimWidth, Part.Width).Build();

    /// <summary>Expected sum of net widths that a glue-up of so many strips, each with passes of its own, must have.</summary>
    public Length RoughWidth(int strips)
    {
        var deviations = WidthDeviations(WidthRisk);
        return WidthBase(deviations) + (WidthPerEdge(deviations) * (2 * strips));
    }

    /// <summary>Standard deviations of width to keep in hand for a risk of all layers. [1]</summary>
    /// <param name="risk">The risk, above zero.</param>
    public double WidthDeviations(double risk) => Risk.Deviations(risk / Layers);

    /// <summary>
    /// The part of the width that does not depend on the strips. The spread grows with the root of the number of edges; its tangent is never below it, so
    /// this and <see cref="WidthPerEdge"/> for each edge are never too little.
    /// </summary>
    /// <param name="deviations">Standard deviations to keep in hand.</param>
    public Length WidthBase(double deviations) =>
        Part.Width + Shop.Allowances.WidthTrim.Mean + Times(TangentAtNoEdge, deviations);

    /// <summary>What each edge with work of its own adds; a strip that shares its pass with another of the same glue-up counts its edges twice.</summary>
    /// <param name="deviations">Standard deviations to keep in hand.</param>
    public Length WidthPerEdge(double deviations) => Times(SlopePerEdge, deviations);

    private Length CleanUp => Layers > 1 ? Shop.Allowances.ResawCleanUp.Mean : Length.Zero;

    private double UsualVariance => Square(Shop.Allowances.WidthTrim.Spread) + (2 * UsualStrips * Square(Shop.Allowances.EdgeJoint.Spread));

    private double SlopePerEdge => UsualVariance == 0 ? 0 : Square(Shop.Allowances.EdgeJoint.Spread) / (2 * Math.Sqrt(UsualVariance));

    private double TangentAtNoEdge => Math.Sqrt(UsualVariance) - (2 * UsualStrips * SlopePerEdge);

    private double SpreadAtStrips(Length stripSpread) => Math.Sqrt(
        Square(stripSpread) + Square(Shop.Allowances.PanelFlatten.Spread) + (Layers > 1 ? Layers * Layers * Square(Shop.Allowances.ResawCleanUp.Spread) : 0));

    private static double DeviationsOf(Length over, double spread) =>
        spread == 0 ? (over >= Length.Zero ? double.PositiveInfinity : double.NegativeInfinity) : over.Picometres / spread;

    private static double DeviationsOf(Length over, Length spread) => DeviationsOf(over, (double)spread.Picometres);

    private static double Square(Length length) => (double)length.Picometres * length.Picometres;

    private static Length Times(double picometres, double factor) => Length.FromPicometres((long)Math.Ceiling(picometres * factor));

    private static Length Times(Length length, double factor) => Times(length.Picometres, factor);
}
