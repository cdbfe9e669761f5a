using System.Collections.Immutable;

namespace Scrapwright.Core.Gifts;

/// <summary>The occasions of a workshop, and what was given on those that are over. Neither changes a plan but by the dates of its gifts.</summary>
/// <param name="Occasions">The occasions; names are unique.</param>
/// <param name="Given">What was given, in the order of the list.</param>
public sealed record GiftYears(ImmutableArray<Occasion> Occasions, ImmutableArray<GivenGift> Given)
{
    /// <summary>No occasion, and nothing given.</summary>
    public static GiftYears None { get; } = new([], []);

    /// <summary>Whether there is neither an occasion nor anything given.</summary>
    public bool AreNone => Occasions.IsEmpty && Given.IsEmpty;

    /// <summary>Whether two names mean the same person, circle or occasion: alike but for upper and lower case and blanks around them.</summary>
    public static bool IsSame(string one, string other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return one.AsSpan().Trim().Equals(other.AsSpan().Trim(), StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>The occasion of that name, or null.</summary>
    public Occasion? FindOccasion(string name) => Occasions.FirstOrDefault(occasion => IsSame(occasion.Name, name));

    /// <summary>By when a gift is due: its own date where it has one, else the date its occasion stands on; null for neither.</summary>
    /// <param name="gift">The gift.</param>
    /// <param name="today">The day it is seen from.</param>
    public DateOnly? FindDue(Gift gift, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(gift);
        return gift.Due ?? (gift.Occasion.Length > 0 ? FindOccasion(gift.Occasion)?.StandsOn(today) : null);
    }

    /// <summary>The gifts as a plan and its calendar take them: each with the date it is due.</summary>
    /// <param name="gifts">The gifts of the list.</param>
    /// <param name="today">The day they are seen from.</param>
    public ImmutableArray<Gift> Dated(ImmutableArray<Gift> gifts, DateOnly today) => [.. gifts.Select(gift => gift with { Due = FindDue(gift, today) })];

    /// <summary>What somebody has been given, the latest first.</summary>
    public ImmutableArray<GivenGift> GivenTo(string recipient) =>
        recipient.AsSpan().Trim().IsEmpty ? [] : [.. Given.Where(given => IsSame(given.Recipient, recipient)).OrderByDescending(given => given.Date)];

    /// <summary>Keys of the designs that somebody has had, each once.</summary>
    public ImmutableArray<string> DesignsHadBy(string recipient) =>
        [.. GivenTo(recipient).Select(given => given.Design.Trim()).Distinct(StringComparer.OrdinalIgnoreCase)];

    /// <summary>Keys of the designs that somebody has had or has on the list.</summary>
    /// <param name="recipient">Who.</param>
    /// <param name="gifts">The gifts of the list.</param>
    public ImmutableArray<string> DesignsKnownTo(string recipient, ImmutableArray<Gift> gifts) =>
        [.. DesignsHadBy(recipient), .. gifts.Where(gift => IsSame(gift.Recipient, recipient)).Select(gift => gift.Design)];

    /// <summary>What was given last time on an occasion: everything of the latest year it was given in, in the order of the list.</summary>
    public ImmutableArray<GivenGift> LastTime(string occasion)
    {
        var all = Given.Where(given => IsSame(given.Occasion, occasion)).ToImmutableArray();
        return all.IsEmpty ? [] : [.. all.Where(given => given.Date.Year == all.Max(other => other.Date).Year)];
    }
}
