using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Plans;

/// <summary>Glue-ups filled with strips of one width from what there is.</summary>
/// <param name="Missing">How many strips are missing.</param>
/// <param name="Tone">How light the missing ones must be.</param>
/// <param name="Used">The wood used.</param>
internal sealed record PanelFill(int Missing, Tone Tone, HashSet<SpareWood> Used)
{
    // The table holds each species once, and hashing all its values at every strip would cost more than the rest.
    private static readonly IEqualityComparer<Species> ByReference = ReferenceEqualityComparer.Instance;

    /// <summary>Puts at each place the wood of which most strips are left among those that stand apart from the last one.</summary>
    public static PanelFill Of(PanelNeeds needs, int glueUps, int strips, Length roughStrip, List<SpareWood> wood, Shop shop)
    {
        var given = wood.Select(w => (Wood: w, Count: w.Count(needs.Overlap, roughStrip, needs.StripThickness, shop))).Where(g => g.Count > 0).ToArray();
        var left = given.GroupBy(g => g.Wood.Species, ByReference).ToDictionary(g => g.Key, g => g.Sum(w => w.Count), ByReference);
        var used = new Dictionary<Species, long>(ByReference);
        var missing = 0;
        var tone = Tone.Any;
        for (var glueUp = 0; glueUp < glueUps; glueUp++)
        {
            Species? last = null;
            for (var place = 0; place < strips; place++)
            {
                var next = left.Where(l => l.Value > 0 && (last is null || needs.Part.Wish!.MayTouch(last, l.Key, shop)))
                    .OrderByDescending(l => l.Value).ThenBy(l => l.Key.Key, StringComparer.Ordinal).Select(l => l.Key).FirstOrDefault();
                if (next is null)
                {
                    missing++;
                    tone = tone == Tone.Any ? Beside(last, needs.Part.Wish!) : tone;
                }
                else
                {
                    left[next]--;
                    used[next] = used.GetValueOrDefault(next) + 1;
                }

                last = next;
            }
        }

        return new PanelFill(missing, tone, Taken(given, used));
    }

    /// <summary>Light beside dark or middling wood, dark beside light wood, any where the panel need not be striped or nothing lies beside.</summary>
    private static Tone Beside(Species? last, PanelWish wish)
    {
        if (last is null || wish.MinimumStrips < 2)
        {
            return Tone.Any;
        }

        return PanelShortage.ToneOf(last.Colour) == Tone.Light ? Tone.Dark : Tone.Light;
    }

    private static HashSet<SpareWood> Taken((SpareWood Wood, long Count)[] given, Dictionary<Species, long> used)
    {
        var taken = new HashSet<SpareWood>(ReferenceEqualityComparer.Instance);
        foreach (var (wood, count) in given)
        {
            if (used.GetValueOrDefault(wood.Species) > 0)
            {
                used[wood.Species] -= count;
                taken.Add(wood);
            }
        }

        return taken;
    }
}
