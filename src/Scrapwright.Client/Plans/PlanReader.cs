using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;

namespace Scrapwright.Client.Plans;

/// <summary>Looks things up in a plan: which wood a piece is, what a part is called, what an assembly step says.</summary>
public sealed class PlanReader
{
    private readonly Dictionary<string, Offcut> offcuts;
    private readonly Dictionary<string, Product> products;
    private readonly Dictionary<string, Gift> gifts;

    /// <summary>A reader of one plan.</summary>
    public PlanReader(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Plan = plan;
        offcuts = plan.Request.Pile.SelectMany(o => o.Pieces()).ToDictionary(o => o.Label, StringComparer.Ordinal);
        gifts = plan.Request.Gifts.ToDictionary(g => g.Label, StringComparer.Ordinal);
        products = GiftDesigns.Derive(plan.Request.Gifts, plan.Request.Designs, plan.Request.Shop)
            .Where(d => d.Outcome is DesignOutcome.Derived)
            .ToDictionary(d => d.Gift.Label, d => ((DesignOutcome.Derived)d.Outcome).Product, StringComparer.Ordinal);
    }

    /// <summary>The plan.</summary>
    public Plan Plan { get; }

    /// <summary>Key of the species of a single offcut; empty when it is not in the pile.</summary>
    public string SpeciesOf(string offcut) => offcuts.TryGetValue(offcut, out var found) ? found.Species : "";

    /// <summary>Species along the width of a piece, lower edge first, each with its share of the width.</summary>
    public ImmutableArray<(string Species, double Share)> Bands(Piece piece) =>
        piece.Width.IsZero ? [] : [.. piece.Lanes.Select(l => (SpeciesOf(l.Offcut), l.Width.Picometres / (double)piece.Width.Picometres))];

    /// <summary>What a gift is, in a line.</summary>
    public string Summary(string gift) => products.TryGetValue(gift, out var product) ? product.Summary : "";

    /// <summary>Who a gift is for, or its label.</summary>
    public string Recipient(string gift) => gifts.TryGetValue(gift, out var found) && found.Recipient.Length > 0 ? found.Recipient : gift;

    /// <summary>The product of a gift; null when its options did not fit.</summary>
    public Product? ProductOf(string gift) => products.GetValueOrDefault(gift);

    /// <summary>What a part is called.</summary>
    public string PartTitle(string gift, string part) =>
        ProductOf(gift)?.Parts.FirstOrDefault(p => p.Key == part)?.Title ?? part;

    /// <summary>The text of an assembly step with its sizes filled in; empty for a milling step.</summary>
    public string TextOf(Step step, Func<Length, string> text)
    {
        if (step.AssemblyIndex < 0 || ProductOf(step.Gift) is not { } product || step.AssemblyIndex >= product.Assembly.Length)
        {
            return "";
        }

        var assembly = product.Assembly[step.AssemblyIndex];
        return string.Format(assembly.Text, [.. assembly.Sizes.Select(s => (object)text(s))]);
    }
}
