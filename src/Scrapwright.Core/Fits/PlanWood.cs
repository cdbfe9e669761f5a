using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Fits;

/// <summary>Which wood every part of a plan is of, and the air it is made in and lives in.</summary>
internal sealed class PlanWood
{
    private readonly PlanIndex index;
    private readonly Dictionary<string, RodUse> rods = [];
    private readonly Dictionary<string, MadeGift> made = [];
    private readonly Dictionary<string, MoistureYear> homes = new(StringComparer.OrdinalIgnoreCase);

    internal PlanWood(PlanIndex index)
    {
        this.index = index;
        foreach (var rod in Plan.Rods)
            foreach (var id in rod.Pieces) rods[id] = rod;
        foreach (var gift in Plan.Made) made.TryAdd(gift.Gift, gift);
        Here = new(ShopClimates.OfShop(Shop));
    }

    internal Plan Plan => index.Plan;

    internal Shop Shop => Plan.Request.Shop;

    /// <summary>The air of the shop; the table's usual one where the shop names none that is known.</summary>
    internal MoistureYear Here { get; }

    internal Gift? Gift(string label) => index.Gift(label);

    internal Product? Product(string gift) => index.Product(gift);

    /// <summary>The air where a gift will live; the shop's where it names none that is known.</summary>
    internal MoistureYear Home(string gift)
    {
        var name = Gift(gift)?.Climate.Trim() ?? "";
        if (name.Length == 0) return Here;
        if (homes.TryGetValue(name, out var known)) return known;
        return homes[name] = ShopClimates.Find(Shop, name) is { } climate ? new(climate) : Here;
    }

    /// <summary>The month a gift is fitted: that of the day it is due; null for none.</summary>
    internal int? Month(string gift) => Gift(gift)?.Due?.Month;

    /// <summary>Moisture content when a gift is fitted. [%]</summary>
    internal double FittedPercent(string gift) => Here.At(Month(gift) ?? Here.DriestMonth);

    internal Offcut? Offcut(string label) => index.Offcut(label);

    /// <summary>The rod a piece is cut from; null when it is cut from wood of the pile.</summary>
    internal RodUse? Rod(string piece) => rods.GetValueOrDefault(piece);

    /// <summary>The panel of a glue-up as its last step leaves it: the first layer where it was resawn; null when the plan does not tell.</summary>
    internal Piece? Panel(GlueUp glueUp) => index.Last(glueUp.Id + "/1") ?? index.Last(glueUp.Id);

    /// <summary>The pieces that the copies of a part are in the end, in the order of the copies; empty when the plan does not make them.</summary>
    internal ImmutableArray<Piece> Copies(string gift, string part) => made.TryGetValue(gift, out var parts)
        ? [.. parts.Parts.Where(p => p.Part == part).OrderBy(p => p.Copy).Select(p => index.Last(p.Piece)).OfType<Piece>()]
        : [];

    /// <summary>The wood of a piece: its strips from lower to upper edge, or its rod. Sizes lie in the direction asked for; strips add up across the width only.</summary>
    internal ImmutableArray<MovingWood> Woods(Piece piece, GrainDirection direction)
    {
        if (rods.TryGetValue(piece.Id, out var rod)) return [new(rod.Species, RingOrientation.Unknown, direction, direction == GrainDirection.Along ? piece.Length : rod.Diameter)];
        return
        [
            .. from lane in piece.Lanes
               let offcut = Offcut(lane.Offcut)
               where offcut is not null
               select new MovingWood(offcut.Species, offcut.Rings, direction, direction switch
               {
                   GrainDirection.Along => piece.Length,
                   GrainDirection.Width => lane.Width,
                   _ => piece.Thickness,
               }),
        ];
    }

    /// <summary>A piece as a body that moves in one direction.</summary>
    internal MovingBody Body(Piece piece, GrainDirection direction) => new(direction, Woods(piece, direction));

    /// <summary>Species of the pile, keys, each once.</summary>
    internal ImmutableArray<string> PileSpecies => [.. Plan.Request.Pile.Select(o => o.Species).Distinct()];
}
