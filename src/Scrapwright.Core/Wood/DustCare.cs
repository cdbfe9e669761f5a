using System.Collections.Immutable;

namespace Scrapwright.Core.Wood;

/// <summary>What to wear and do against a wood's dust. Common practice; local rules, the machine's manual and the mask's instructions go before it.</summary>
public sealed record DustCare
{
    private const string Practice = "Common practice, no source";

    private DustCare()
    {
    }

    /// <summary>How fine a mask.</summary>
    public required DustMask Mask { get; init; }

    /// <summary>True when closed goggles are better than glasses: the dust is known to trouble eyes.</summary>
    public required bool NeedsGoggles { get; init; }

    /// <summary>True when skin is to be covered: wood or dust are known to trouble it.</summary>
    public required bool CoversSkin { get; init; }

    /// <summary>What to do, most useful first; each line ends in its source or in "Common practice, no source".</summary>
    public required ImmutableArray<string> Advice { get; init; }

    /// <summary>The care for a species.</summary>
    /// <param name="species">The wood.</param>
    /// <returns>
    /// The finest mask for hardwood, for dust classed as a cause of cancer and for woods known to trouble breathing; goggles and covered skin where the chart [ToxicWoods1990] names eyes or skin.
    /// </returns>
    public static DustCare For(Species species)
    {
        ArgumentNullException.ThrowIfNull(species);
        ImmutableArray<WoodReaction> reactions = WoodReactions.For(species);
        bool Shows(ReactionWay way) => reactions.Any(reaction => reaction.Ways.Contains(way));

        DustMask mask = species.IsHardwood || Shows(ReactionWay.Breathing) || DustLimits.ClassOf(species) != DustClass.NotClassified ? DustMask.Finest : DustMask.Fine;
        bool goggles = Shows(ReactionWay.Eyes), skin = Shows(ReactionWay.Skin);
        return new DustCare { Mask = mask, NeedsGoggles = goggles, CoversSkin = skin, Advice = [.. Lines(mask, goggles, skin, !reactions.IsEmpty)] };
    }

    private static IEnumerable<string> Lines(DustMask mask, bool goggles, bool skin, bool isKnown)
    {
        yield return $"Extraction at the machine first; a mask is for what it misses. {Practice}";
        yield return mask == DustMask.Finest
            ? $"Wear a close-fitting mask for the finest dust (FFP3 or P100), also when sweeping up and emptying the bag. {Practice}"
            : $"Wear a close-fitting mask for fine dust (FFP2 or N95), also when sweeping up and emptying the bag. {Practice}";
        yield return $"Vacuum or wipe up dust; do not blow it off or sweep it dry. {Practice}";
        yield return goggles
            ? $"Closed goggles when sanding: this dust is known to trouble eyes. {Practice}"
            : $"Safety glasses at every machine. {Practice}";
        if (skin)
        {
            yield return $"Long sleeves, and wash skin after work. Gloves only for handling, never near a turning blade, bit or belt. {Practice}";
        }

        if (isKnown)
        {
            yield return $"Stop at the first rash, running nose or tight chest, and name the wood to a doctor. {Practice}";
        }
    }
}
