using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Gifts;

/// <summary>One pass over a gift list: each gift is derived once, those that are held before those that hold them.</summary>
internal sealed class GiftDerivation(ImmutableArray<Gift> gifts, ImmutableArray<Design> designs, Shop shop)
{
    private const string Holds = "holds";
    private readonly Dictionary<Gift, DesignOutcome> derived = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<Gift, string> heldLabels = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<string, Gift> byLabel = gifts
        .GroupBy(g => DesignOptions.Plain(g.Label), StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);

    internal DesignOutcome Derive(Gift gift)
    {
        if (!derived.TryGetValue(gift, out var outcome))
        {
            outcome = DeriveAnew(gift);
            derived.Add(gift, outcome);
        }

        return outcome;
    }

    private DesignOutcome DeriveAnew(Gift gift)
    {
        if (FindDesign(gift.Design) is not { } design)
            return Refused("design", gift.Design, DesignMessages.KnownDesign(NearestWord.Of(gift.Design, designs.Select(d => d.Key))));
        if (DesignCatalogue.FindFamily(design.Family.Trim()) is not { } family)
            return Refused("family", design.Family, DesignMessages.KnownFamily(NearestWord.Of(design.Family, DesignCatalogue.Families.Select(f => f.Key))));
        var options = Merge(design.Options, gift.Options);
        var label = HeldLabel(gift);
        if (label.Length == 0) return family.Derive(options, new DesignContext(shop));
        if (FindGift(label) is not { } held)
            return Refused(Holds, label, DesignMessages.KnownGift(NearestWord.Of(label, gifts.Where(g => !ReferenceEquals(g, gift)).Select(g => g.Label))));
        if (Ring(gift) is { } ring) return Refused(Holds, label, DesignMessages.NoRing(ring));
        // What holds a gift makes no squares of its own, so there is nothing to hold, and no chain to follow.
        if (HeldLabel(held).Length > 0) return Refused(Holds, label, DesignMessages.GiftWithSquares);
        return Derive(held) is DesignOutcome.Derived fits
            ? family.Derive(options, new DesignContext(shop, fits.Product, held.Label))
            : Refused(Holds, label, DesignMessages.HeldGiftFits(held.Label));
    }

    /// <summary>The labels from a gift along what each holds, when that comes to a gift for the second time; null when it ends.</summary>
    private ImmutableArray<string>? Ring(Gift gift)
    {
        var labels = ImmutableArray.CreateBuilder<string>();
        var seen = new HashSet<Gift>(ReferenceEqualityComparer.Instance);
        for (Gift? at = gift; at is not null; at = FindGift(HeldLabel(at)))
        {
            labels.Add(at.Label);
            if (!seen.Add(at)) return labels.ToImmutable();
        }

        return null;
    }

    private string HeldLabel(Gift gift)
    {
        if (heldLabels.TryGetValue(gift, out var known)) return known;
        var label = FindDesign(gift.Design) is { } design
            && DesignCatalogue.FindFamily(design.Family.Trim()) is { } family
            && family.Parameters.Any(p => p.Key == Holds)
            && Merge(design.Options, gift.Options).TryGetValue(Holds, out var text) ? text.Trim() : "";
        heldLabels.Add(gift, label);
        return label;
    }

    private Gift? FindGift(string label) => label.Length == 0 ? null : byLabel.GetValueOrDefault(DesignOptions.Plain(label));

    private Design? FindDesign(string key) => designs.FirstOrDefault(d => string.Equals(d.Key, key.Trim(), StringComparison.OrdinalIgnoreCase));

    private static ImmutableSortedDictionary<string, string> Merge(
        ImmutableSortedDictionary<string, string> ofDesign, ImmutableSortedDictionary<string, string> ofGift)
    {
        var plain = ofDesign.Concat(ofGift).GroupBy(o => o.Key.Trim().ToLowerInvariant(), StringComparer.Ordinal);
        return plain.ToImmutableSortedDictionary(g => g.Key, g => g.Last().Value, StringComparer.Ordinal);
    }

    private static DesignOutcome.Refused Refused(string option, string found, string expected) =>
        new([new DesignProblem(option, DesignOptions.Short(found), expected)]);
}
