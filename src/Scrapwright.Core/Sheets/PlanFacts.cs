using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Sheets;

/// <summary>What the sheets look up in a plan again and again.</summary>
internal sealed class PlanFacts
{
    private readonly Dictionary<string, Offcut> offcuts;
    private readonly Dictionary<(int Step, string Id), Piece> before = [];
    private readonly Dictionary<string, Piece> last = [];
    private readonly Dictionary<string, Product> products;

    internal PlanFacts(Plan plan, ImmutableArray<GiftDesign> designs)
    {
        (Plan, Designs, Woods) = (plan, designs, new PlanWoods(plan));
        Sizes = new Sizes(plan.Request.Shop);
        offcuts = plan.Request.Pile.SelectMany(o => o.Pieces()).ToDictionary(o => o.Label);
        products = designs.Select(d => (d.Gift.Label, Product: (d.Outcome as DesignOutcome.Derived)?.Product))
            .Where(d => d.Product is not null).ToDictionary(d => d.Label, d => d.Product!);
        Follow();
        Hatches = Hatches.For(Used().Select(o => offcuts[o].Species));
    }

    internal Plan Plan { get; }

    internal ImmutableArray<GiftDesign> Designs { get; }

    internal PlanWoods Woods { get; }

    internal Shop Shop => Plan.Request.Shop;

    internal Sizes Sizes { get; }

    internal Hatches Hatches { get; }

    internal Product? Product(string gift) => products.GetValueOrDefault(gift);

    /// <summary>What a part of a gift is called; its key when the design does not tell.</summary>
    internal string PartTitle(string gift, string part) => Product(gift)?.Parts.FirstOrDefault(p => p.Key == part)?.Title ?? part;

    internal Gift? Gift(string label) => Plan.Request.Gifts.FirstOrDefault(g => g.Label == label);

    /// <summary>The piece as it comes to a step; null when the plan does not tell.</summary>
    internal Piece? Before(Step step, string id) => before.GetValueOrDefault((step.Number, id));

    /// <summary>The piece as the last step leaves it.</summary>
    internal Piece? Last(string id) => last.GetValueOrDefault(id);

    internal string SpeciesOf(string offcut) => offcuts.TryGetValue(offcut, out var found) ? found.Species : "";

    internal static string SpeciesName(string key) => SpeciesTable.All.FirstOrDefault(s => s.Key == key)?.Name ?? key;

    /// <summary>Keys of the species of a piece, from lower to upper edge, each once.</summary>
    internal ImmutableArray<string> Species(Piece? piece) =>
        piece is null ? [] : [.. piece.Lanes.Select(l => SpeciesOf(l.Offcut)).Where(s => s.Length > 0).Distinct()];

    /// <summary>Names of the species of a piece, joined.</summary>
    internal string Wood(Piece? piece) => string.Join(" + ", Species(piece).Select(SpeciesName));

    internal Part? PartOf(string gift, string key) => Product(gift)?.Parts.FirstOrDefault(p => p.Key == key);

    private IEnumerable<string> Used()
    {
        var untouched = Plan.Leftovers.Select(l => l.Piece.Id).ToHashSet();
        var used = Plan.GlueUps.SelectMany(g => g.Strips).Select(s => s.Offcut).Concat(Plan.Boards.Select(b => b.Offcut))
            .Where(offcuts.ContainsKey).Distinct().ToArray();
        return used.Length > 0 ? used : offcuts.Keys.Where(k => !untouched.Contains(k));
    }

    private void Follow()
    {
        foreach (var offcut in offcuts.Values)
            last[offcut.Label] = new(offcut.Label, offcut.Length, offcut.Width, offcut.Thickness, [new(offcut.Label, offcut.Width)]);
        foreach (var rod in Plan.Rods) last[rod.Id] = new(rod.Id, rod.Length, rod.Diameter, rod.Diameter, []);
        foreach (var step in Plan.Steps)
        {
            foreach (var id in step.Works.SelectMany(w => w.In))
                if (last.TryGetValue(id, out var piece)) before[(step.Number, id)] = piece;
            foreach (var piece in step.Works.SelectMany(w => w.Out)) last[piece.Id] = piece;
        }
    }
}
