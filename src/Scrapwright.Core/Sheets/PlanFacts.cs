using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Chances;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Sheets;

/// <summary>What the sheets look up in a plan again and again.</summary>
internal sealed class PlanFacts
{
    private PlanChances? chances;

    internal PlanFacts(Plan plan, ImmutableArray<GiftDesign> designs)
    {
        Index = new PlanIndex(plan, designs);
        Sizes = new Sizes(plan.Request.Shop);
        Hatches = Hatches.For(Used().Select(SpeciesOf));
    }

    internal PlanIndex Index { get; }

    /// <summary>How likely panels and gifts meet size; worked out when first asked for.</summary>
    internal PlanChances Chances => chances ??= PlanChances.Of(Plan, Designs);

    internal Plan Plan => Index.Plan;

    internal ImmutableArray<GiftDesign> Designs => Index.Designs;

    internal Shop Shop => Plan.Request.Shop;

    internal Sizes Sizes { get; }

    internal Hatches Hatches { get; }

    internal Product? Product(string gift) => Index.Product(gift);

    /// <summary>What a part of a gift is called; its key when the design does not tell.</summary>
    internal string PartTitle(string gift, string part) => Index.PartTitle(gift, part);

    internal Gift? Gift(string label) => Index.Gift(label);

    /// <summary>The piece as it comes to a step; null when the plan does not tell.</summary>
    internal Piece? Before(Step step, string id) => Index.Before(step, id);

    /// <summary>The piece as the last step leaves it.</summary>
    internal Piece? Last(string id) => Index.Last(id);

    internal string SpeciesOf(string offcut) => Index.SpeciesOf(offcut);

    /// <summary>Keys of the species of a piece, from lower to upper edge, each once.</summary>
    internal ImmutableArray<string> Species(Piece? piece) =>
        piece is null ? [] : [.. piece.Lanes.Select(l => SpeciesOf(l.Offcut)).Where(s => s.Length > 0).Distinct()];

    /// <summary>Names of the species of a piece, joined.</summary>
    internal string Wood(Piece? piece) => string.Join(" + ", Species(piece).Select(SpeciesTable.NameOf));

    internal Part? PartOf(string gift, string key) => Product(gift)?.Parts.FirstOrDefault(p => p.Key == key);

    private IEnumerable<string> Used()
    {
        var untouched = Plan.Leftovers.Select(l => l.Piece.Id).ToHashSet();
        var used = Plan.GlueUps.SelectMany(g => g.Strips).Select(s => s.Offcut).Concat(Plan.Boards.Select(b => b.Offcut))
            .Where(o => Index.Offcut(o) is not null).Distinct().ToArray();
        return used.Length > 0 ? used : Index.Offcuts.Select(o => o.Label).Where(k => !untouched.Contains(k));
    }
}
