using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Sheets;

/// <summary>What sheets, screens and the terminal say about chances.</summary>
public static class ChanceWords
{
    /// <summary>A size in one word: "width".</summary>
    public static string Of(SizeKind size) => size switch
    {
        SizeKind.Length => "length",
        SizeKind.Width => "width",
        SizeKind.Thickness => "thickness",
        _ => throw new ArgumentOutOfRangeException(nameof(size), size, "Unknown size."),
    };

    /// <summary>The weakest link of a gift and what would lift it, in one line.</summary>
    /// <param name="link">The weakest link.</param>
    /// <param name="giftPerMille">The gift's chance as it is, in thousandths.</param>
    /// <param name="shop">The shop, for its unit.</param>
    public static string Of(WeakLink link, int giftPerMille, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(link);
        ArgumentNullException.ThrowIfNull(shop);
        var more = LengthFormatter.Format(link.More, new LengthStyle { Unit = shop.Unit, Denominator = shop.Denominator });
        var lift = link.Size switch
        {
            SizeKind.Length => $"strips {more} longer",
            SizeKind.Width when link.Strip.Length > 0 => $"one strip {more} wider",
            SizeKind.Width => $"{more} more width",
            _ when link.Strip.Length > 0 => $"{more} more thickness in {link.Strip}",
            _ => $"{more} more thickness",
        };
        var gain = PlanWords.Chance(link.GiftPerMilleThen) == PlanWords.Chance(giftPerMille)
            ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{giftPerMille / 10.0:0.0} % to {link.GiftPerMilleThen / 10.0:0.0} %")
            : $"{PlanWords.Chance(giftPerMille)} to {PlanWords.Chance(link.GiftPerMilleThen)}";
        return link.GiftPerMilleThen > giftPerMille
            ? $"Weakest: {Of(link.Size)} of {link.Where}. {char.ToUpperInvariant(lift[0])}{lift[1..]}: from {gain}."
            : $"Weakest: {Of(link.Size)} of {link.Where}.";
    }
}
