using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Designs;

namespace Scrapwright.Core.Gifts;

/// <summary>A gift on the list whose recipient has had its design before. A doubt only: nothing is left out because of it.</summary>
/// <param name="Gift">Label of the gift.</param>
/// <param name="Former">The former gift that is most like it, of equals the latest.</param>
/// <param name="Likeness">How much it is like that.</param>
/// <param name="Else">Designs that the recipient has neither had nor is to get: something else to make.</param>
public sealed record HadBefore(string Gift, GivenGift Former, Likeness Likeness, ImmutableArray<Design> Else)
{
    /// <summary>Every gift of a list whose recipient has had its design before, in the order of the list.</summary>
    /// <param name="gifts">The gifts of the list.</param>
    /// <param name="years">What was given before.</param>
    /// <param name="designs">Designs from files, beside the built-in ones.</param>
    public static ImmutableArray<HadBefore> Of(ImmutableArray<Gift> gifts, GiftYears years, ImmutableArray<Design> designs)
    {
        ArgumentNullException.ThrowIfNull(years);
        var all = DesignCatalogue.With(designs);
        return
        [
            .. gifts.Select(gift => years.GivenTo(gift.Recipient)
                    .Where(former => GiftYears.IsSame(former.Design, gift.Design))
                    .Select(former => new HadBefore(gift.Label, former, GiftLikeness.Of(gift, former, all), ElseFor(gift.Recipient, gifts, years, all)))
                    .OrderByDescending(had => had.Likeness).ThenByDescending(had => had.Former.Date).FirstOrDefault())
                .OfType<HadBefore>(),
        ];
    }

    /// <summary>Designs that somebody has neither had nor has on the list.</summary>
    /// <param name="recipient">Who.</param>
    /// <param name="gifts">The gifts of the list.</param>
    /// <param name="years">What was given before.</param>
    /// <param name="designs">All designs there are.</param>
    public static ImmutableArray<Design> ElseFor(string recipient, ImmutableArray<Gift> gifts, GiftYears years, ImmutableArray<Design> designs)
    {
        ArgumentNullException.ThrowIfNull(years);
        var known = years.DesignsKnownTo(recipient, gifts);
        return [.. designs.Where(design => !known.Any(key => GiftYears.IsSame(key, design.Key)))];
    }

    /// <summary>The doubt in one sentence: who had what, when, and how much alike it is.</summary>
    /// <param name="designs">All designs there are, for their titles.</param>
    public string Words(ImmutableArray<Design> designs)
    {
        var what = Likeness switch
        {
            Likeness.Same => "the very same",
            Likeness.SameWoods => "the same design in the same woods",
            _ => "the same design",
        };
        var title = designs.FirstOrDefault(design => GiftYears.IsSame(design.Key, Former.Design))?.Title ?? Former.Design;
        var when = Former.Date.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
        var where = Former.Occasion.Length > 0 ? $", {Former.Occasion}" : "";
        return $"{Former.Recipient} has had {what} ({title.ToLowerInvariant()}) on {when}{where}.";
    }

    /// <summary>What could be made instead, in one sentence; empty when the recipient has had every design.</summary>
    public string ElseWords() => Else.IsEmpty ? "" : $"Something else: {string.Join(", ", Else.Select(design => design.Title.ToLowerInvariant()))}.";
}
