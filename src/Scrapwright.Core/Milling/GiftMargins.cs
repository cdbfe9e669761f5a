using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Milling;

/// <summary>
/// How the chance asked for of a whole gift is shared out among the sizes of its panels and boards, so that the wood held in hand is least.
/// The sizes' chances multiply to the one asked for; as every spread works towards less wood, sizes that share a spread hold together at least that often.
/// </summary>
/// <remarks>docs/science/chance.md has the sum and where it comes from.</remarks>
public sealed class GiftMargins
{
    private readonly Dictionary<string, PartMargins> panels = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SizeMargins> boards = new(StringComparer.Ordinal);

    private GiftMargins()
    {
    }

    /// <summary>Shares out the chance the shop asks for.</summary>
    public static GiftMargins Of(Product product, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(product);
        ArgumentNullException.ThrowIfNull(shop);
        var split = new MarginSplit();
        Part[] parts = [.. product.Parts.Where(p => p.Kind == PartKind.Panel)];
        GrainRun[] runs = [.. product.Runs.Where(r => !r.Members.IsEmpty)];
        foreach (var part in parts)
        {
            var length = (part.Length * part.Count) + (shop.Allowances.EndTrim.Mean * 2);
            var needs = new PanelNeeds(part, part.Count, 1, shop);
            var usual = needs.ThicknessLadder(needs.PlanedThickness, StripMilling.RoughSpread(shop)).Rungs[0].Spread;
            AddSizes(split, length, part.Width, part.Thickness, needs.UsualSpread, usual, MostStrips(part), shop);
        }

        foreach (var run in runs)
        {
            var needs = new SolidNeeds(run, product.Parts, shop);
            AddSizes(split, needs.Length, needs.PartWidth, needs.PlanedThickness, StripMilling.Width(needs.PartWidth, shop).Spread, StripMilling.RoughSpread(shop), 1, shop);
        }

        var deviations = split.Deviations(shop.ConfidencePercent);
        var margins = new GiftMargins();
        for (var i = 0; i < parts.Length; i++)
        {
            margins.panels[parts[i].Key] = new PartMargins(parts[i].Count, MostStrips(parts[i]), At(i));
        }

        for (var i = 0; i < runs.Length; i++)
        {
            margins.boards[runs[i].Mark] = At(parts.Length + i);
        }

        return margins;

        SizeMargins At(int place) => new() { Width = deviations[3 * place], Thickness = deviations[(3 * place) + 1], Length = deviations[(3 * place) + 2] };
    }

    /// <summary>What a glue-up holds in hand for a panel part of which it gives so many copies.</summary>
    /// <param name="part">Key of the part.</param>
    /// <param name="pieces">Copies of it that come from the glue-up; when it serves other gifts too, only those of this part.</param>
    /// <param name="layers">Layers it is sawn into.</param>
    /// <exception cref="KeyNotFoundException">The product has no such panel part.</exception>
    public SizeMargins OfPanel(string part, int pieces, int layers) => panels[part].Of(pieces, layers);

    /// <summary>What the strip of a run holds in hand.</summary>
    /// <exception cref="KeyNotFoundException">The product has no such run.</exception>
    public SizeMargins OfBoard(string run) => boards[run];

    /// <summary>Wood that one more deviation in hand costs: the spread times the face it is added to.</summary>
    private static void AddSizes(MarginSplit split, Length length, Length width, Length thickness, Length widthSpread, Length thicknessSpread, int strips, Shop shop)
    {
        split.Add(length.Millimetres * thickness.Millimetres * widthSpread.Millimetres, 1);
        split.Add(length.Millimetres * width.Millimetres * thicknessSpread.Millimetres, strips);
        split.Add(width.Millimetres * thickness.Millimetres * shop.Allowances.EndTrim.Spread.Millimetres * Math.Sqrt(2), 1);
    }

    private static int MostStrips(Part part) => part.Wish?.MaximumStrips ?? 12;

    /// <summary>The chances of a part's sizes over all its glue-ups.</summary>
    private sealed record PartMargins(int Count, int Strips, SizeMargins Whole)
    {
        /// <summary>
        /// The share of one glue-up that gives <paramref name="yield"/> copies. Glue-ups of a part of which none can be left out give together at most the count less one
        /// and the least of their yields, so shares of yield / (count − 1 + yield) never add up to more than one; one that gives all stands alone.
        /// </summary>
        public SizeMargins Of(int yield, int layers)
        {
            var share = yield >= Count ? 1 : yield / (double)(Count - 1 + yield);
            return new SizeMargins
            {
                Width = Part(Whole.Width, share / layers),
                Thickness = Part(Whole.Thickness, share * Strips / (Strips + layers - 1)),
                Length = Part(Whole.Length, share / layers),
            };
        }

        private static double Part(double deviations, double share)
        {
            if (share >= 1)
            {
                return deviations;
            }

            var risk = -double.ExpM1(share * Math.Log(1 - Chance.NormalShare(-deviations)));
            return risk <= 0 ? deviations : Chance.DeviationsForRisk(Math.Min(risk, 0.5) * 1000);
        }
    }
}
