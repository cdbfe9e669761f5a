using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Milling;

/// <summary>How many clamps a glue-up takes and how wide it may be.</summary>
public static class Clamping
{
    /// <summary>Clamps along a glue-up: one at each end and no gap wider than the shop's spacing; at least two. Common practice, no source.</summary>
    public static int Needed(Length overlap, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        var gaps = (overlap.Picometres + shop.ClampSpacing.Picometres - 1) / shop.ClampSpacing.Picometres;
        return (int)Math.Max(2, gaps + 1);
    }

    /// <summary>Widest glue-up that so many clamps of the rack close; zero when there are not so many.</summary>
    public static Length WidestWith(int clamps, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        var left = clamps;
        foreach (var kind in shop.Clamps.OrderByDescending(c => c.Reach))
        {
            left -= kind.Count;
            if (left <= 0)
            {
                return kind.Reach;
            }
        }

        return Length.Zero;
    }
}
