using System.Collections.Immutable;
using Scrapwright.Core.Designs;

namespace Scrapwright.Core.Gifts;

/// <summary>Takes the gifts of an occasion from the list into what was given.</summary>
public static class HandingOver
{
    /// <summary>What would come of it; nothing is changed by asking.</summary>
    /// <param name="gifts">The gifts of the list.</param>
    /// <param name="years">The occasions, and what was given before.</param>
    /// <param name="occasion">Name of the occasion.</param>
    /// <param name="on">When they were given; null for the date it stands on.</param>
    /// <param name="stay">Labels of gifts for it that were not given and stay on the list.</param>
    /// <param name="today">Today: nothing is given later than that.</param>
    public static HandOver Of(ImmutableArray<Gift> gifts, GiftYears years, string occasion, DateOnly? on, ImmutableArray<string> stay, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(years);
        if (years.FindOccasion(occasion) is not { } found) return new HandOver.NoOccasion(NearestWord.Of(occasion, years.Occasions.Select(o => o.Name)));
        var date = on ?? found.StandsOn(today);
        if (date > today) return new HandOver.TooEarly(date);
        var ofIt = gifts.Where(gift => gift.Occasion.Length > 0 && GiftYears.IsSame(gift.Occasion, found.Name)).ToImmutableArray();
        foreach (var label in stay)
        {
            if (ofIt.All(gift => !GiftYears.IsSame(gift.Label, label))) return new HandOver.NoSuchGift(label, NearestWord.Of(label, ofIt.Select(gift => gift.Label)));
        }

        var leaving = ofIt.Where(gift => !stay.Any(label => GiftYears.IsSame(gift.Label, label))).ToImmutableArray();
        if (leaving.IsEmpty) return new HandOver.NoGifts();
        ImmutableArray<Gift> left = [.. gifts.Where(gift => !leaving.Contains(gift))];
        foreach (var gift in left)
        {
            if (gift.Options.TryGetValue(SquareSet.Holds, out var label) && leaving.FirstOrDefault(g => GiftYears.IsSame(g.Label, label)) is { } held)
                return new HandOver.HoldsOne(gift.Label, held.Label);
        }

        return new HandOver.Done([.. leaving.Select(gift => GivenGift.Of(gift, date) with { Occasion = found.Name })], left, GoneOn(found, today));
    }

    /// <summary>An occasion after its gifts were given: on its next date, or where it is when it does not come back.</summary>
    /// <param name="occasion">The occasion.</param>
    /// <param name="today">Today.</param>
    public static Occasion GoneOn(Occasion occasion, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        var now = occasion with { Date = occasion.StandsOn(today) };
        return now.FindNext() is { } next ? now with { Date = next } : now;
    }
}
