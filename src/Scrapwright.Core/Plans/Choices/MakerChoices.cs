using System.Collections.Immutable;
using Scrapwright.Core.Pile;

namespace Scrapwright.Core.Plans.Choices;

/// <summary>What the maker has decided before the plan is made: wood kept for later, strips pinned into a glue-up, orders of strips, and work that is done.</summary>
public sealed record MakerChoices
{
    /// <summary>Labels of offcuts that stay whole: of single offcuts, or of entries of the pile for all their pieces.</summary>
    public ImmutableArray<string> Saved { get; init; } = [];

    /// <summary>Offcuts that a part's glue-ups must have a strip of. A gift whose pin cannot be kept is not made, and says why.</summary>
    public ImmutableArray<Pin> Pins { get; init; } = [];

    /// <summary>Orders of strips. One holds for every glue-up of its part that has just these strips, as far as neighbours may lie so.</summary>
    public ImmutableArray<ChosenOrder> Orders { get; init; } = [];

    /// <summary>Glue-ups that are glued: they stay as they are.</summary>
    public ImmutableArray<DoneGlueUp> Glued { get; init; } = [];

    /// <summary>Boards whose parts are cut: they stay as they are.</summary>
    public ImmutableArray<BoardRun> Cut { get; init; } = [];

    /// <summary>Strips that are milled and not glued yet: each goes into a glue-up of its part. A gift whose strip cannot go there is not made, and says why.</summary>
    public ImmutableArray<MilledStrip> MilledStrips { get; init; } = [];

    /// <summary>How the offcuts of what is glued, cut and milled were milled; each offcut once.</summary>
    public ImmutableArray<MilledOffcut> Milled { get; init; } = [];

    /// <summary>True when nothing is decided.</summary>
    public bool AreNone => Saved.IsEmpty && Pins.IsEmpty && Orders.IsEmpty && Glued.IsEmpty && Cut.IsEmpty && MilledStrips.IsEmpty && Milled.IsEmpty;

    /// <summary>The pins of a gift, those of strips that are milled among them.</summary>
    /// <param name="gift">Label of the gift.</param>
    public ImmutableArray<Pin> PinsOf(string gift) =>
        [.. Pins.Concat(MilledStrips.Select(m => new Pin(m.Strip.Offcut, m.Gift, m.Part))).Where(pin => pin.Gift == gift).Distinct()];

    /// <summary>The single offcuts of a pile that are kept for later.</summary>
    /// <param name="pile">The pile.</param>
    public ImmutableHashSet<string> SavedIn(IEnumerable<Offcut> pile)
    {
        ArgumentNullException.ThrowIfNull(pile);
        var saved = Saved.ToHashSet(StringComparer.Ordinal);
        return saved.Count == 0
            ? []
            : [.. pile.SelectMany(entry => entry.Pieces().Where(piece => saved.Contains(piece.Label) || saved.Contains(entry.Label)).Select(piece => piece.Label))];
    }

    /// <summary>The order that holds for a glue-up, or null: the latest that was set for just its strips.</summary>
    /// <param name="gift">Label of the gift.</param>
    /// <param name="part">Key of the part.</param>
    /// <param name="strips">Its strips in any order.</param>
    public ChosenOrder? FindOrder(string gift, string part, IEnumerable<ChosenStrip> strips)
    {
        if (Orders.IsEmpty) return null;
        var sorted = Sorted(strips);
        return Orders.LastOrDefault(order => order.Gift == gift && order.Part == part && Sorted(order.Strips).SequenceEqual(sorted));
    }

    /// <summary>The same choices with an order in place of the one for the same strips.</summary>
    public MakerChoices With(ChosenOrder order)
    {
        ArgumentNullException.ThrowIfNull(order);
        var old = FindOrder(order.Gift, order.Part, order.Strips);
        return this with { Orders = [.. Orders.Where(o => o != old), order] };
    }

    /// <summary>The same choices without the order that holds for a glue-up.</summary>
    public MakerChoices WithoutOrderOf(GlueUp glueUp)
    {
        ArgumentNullException.ThrowIfNull(glueUp);
        var old = FindOrder(glueUp.Gift, glueUp.Part, glueUp.Strips.Select(ChosenStrip.Of));
        return this with { Orders = Orders.RemoveAll(order => order == old) };
    }

    /// <summary>The same choices with an offcut kept for later.</summary>
    /// <param name="label">Label of a single offcut, or of an entry of the pile.</param>
    public MakerChoices WithSaved(string label) => Saved.Contains(label) ? this : this with { Saved = Saved.Add(label) };

    /// <summary>The same choices with offcuts free to be used.</summary>
    /// <param name="labels">Labels of single offcuts, or of entries of the pile.</param>
    public MakerChoices WithoutSaved(params IEnumerable<string> labels) => this with { Saved = Saved.RemoveRange(labels) };

    /// <summary>The same choices with a pin.</summary>
    public MakerChoices With(Pin pin) => Pins.Contains(pin) ? this : this with { Pins = Pins.Add(pin) };

    /// <summary>The same choices without a pin.</summary>
    public MakerChoices Without(Pin pin) => this with { Pins = Pins.RemoveAll(p => p == pin) };

    /// <summary>True when these ask for everything that others ask for, orders aside: then what no plan can do under those, none can do under these.</summary>
    /// <param name="others">The others.</param>
    public bool AskAll(MakerChoices others)
    {
        ArgumentNullException.ThrowIfNull(others);
        return others.Saved.All(Saved.Contains) && others.Pins.All(Pins.Contains) && others.Cut.All(Cut.Contains) && others.MilledStrips.All(MilledStrips.Contains)
            && others.Glued.All(o => Glued.Any(g => (g.Id, g.Gift, g.Part, g.Blanks, g.Layers) == (o.Id, o.Gift, o.Part, o.Blanks, o.Layers) && g.Strips.SequenceEqual(o.Strips) && g.Also.SequenceEqual(o.Also)));
    }

    private static List<ChosenStrip> Sorted(IEnumerable<ChosenStrip> strips) =>
        [.. strips.OrderBy(s => s.Offcut, StringComparer.Ordinal).ThenBy(s => s.RoughWidth)];
}
