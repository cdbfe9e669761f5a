using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Shops;

namespace Scrapwright.Client.Gifts;

/// <summary>A gift while it is being filled in: what is in the fields, and what comes of it.</summary>
public sealed class GiftDraft
{
    private readonly Dictionary<string, string> typed = new(StringComparer.Ordinal);

    /// <summary>A new gift.</summary>
    public GiftDraft()
    {
    }

    /// <summary>An existing gift.</summary>
    public GiftDraft(Gift gift)
    {
        (Label, Recipient, Circle, Design, Due, Priority) = (gift.Label, gift.Recipient, gift.Circle, gift.Design, gift.Due, gift.Priority);
        (Climate, Finish, Occasion) = (gift.Climate, gift.Finish, gift.Occasion);
        foreach (var (key, value) in gift.Options)
        {
            typed[key] = value;
        }
    }

    /// <summary>Short name; when empty, one is made from recipient and design.</summary>
    public string Label { get; set; } = "";

    /// <summary>Who it is for.</summary>
    public string Recipient { get; set; } = "";

    /// <summary>Who would compare.</summary>
    public string Circle { get; set; } = "";

    /// <summary>Key of the design.</summary>
    public string Design { get; set; } = "";

    /// <summary>Name of its occasion; empty for none.</summary>
    public string Occasion { get; set; } = "";

    /// <summary>The date it is due; null for that of its occasion.</summary>
    public DateOnly? Due { get; set; }

    /// <summary>1 is made first.</summary>
    public int Priority { get; set; } = 2;

    /// <summary>Where it will live: key of a climate or name of one of the shop's own; empty for the shop's.</summary>
    public string Climate { get; set; } = "";

    /// <summary>Key of its finish; empty for the shop's.</summary>
    public string Finish { get; set; } = "";

    /// <summary>What stands in an option's field: what was typed, else the design's value, else the family's default.</summary>
    public string Option(DesignParameter parameter, Design? design) =>
        typed.TryGetValue(parameter.Key, out var text) ? text : Standard(parameter, design);

    /// <summary>Fills in an option.</summary>
    public void Set(DesignParameter parameter, string text) => typed[parameter.Key] = text;

    /// <summary>The gift as it would be saved: only options that differ from the design's.</summary>
    public Gift ToGift(DesignFamily family, Design? design, ImmutableArray<Gift> others) => new()
    {
        Label = Label.Trim().Length > 0 ? Label.Trim() : FreeLabel(others),
        Recipient = Recipient.Trim(),
        Circle = Circle.Trim(),
        Design = Design,
        Due = Due,
        Occasion = Occasion,
        Priority = Priority,
        Climate = Climate,
        Finish = Finish,
        Options = family.Parameters
            .Where(p => typed.TryGetValue(p.Key, out var text) && text.Trim() != Standard(p, design))
            .ToImmutableSortedDictionary(p => p.Key, p => typed[p.Key].Trim()),
    };

    /// <summary>What comes of the gift among the others: parts, or which option is wrong.</summary>
    public static DesignOutcome Derive(Gift gift, ImmutableArray<Gift> others, ImmutableArray<Design> designs, Shop shop) =>
        GiftDesigns.Derive(others.Add(gift), designs, shop)[^1].Outcome;

    private static string Standard(DesignParameter parameter, Design? design) =>
        design is not null && design.Options.TryGetValue(parameter.Key, out var text) ? text : parameter.Default;

    private string FreeLabel(ImmutableArray<Gift> others)
    {
        var start = new string([.. Recipient.Trim().Where(char.IsAsciiLetterOrDigit).Take(8)]);
        var stem = start.Length > 0 ? start : "gift";
        var number = 1;
        while (others.Any(g => string.Equals(g.Label, Name(), StringComparison.OrdinalIgnoreCase)))
        {
            number++;
        }

        return Name();

        string Name() => number == 1 && start.Length > 0 ? stem : $"{stem}{number}";
    }
}
