using System.Collections.Immutable;

namespace Scrapwright.Core.Gifts;

/// <summary>What comes of saying that the gifts of an occasion are given.</summary>
public abstract record HandOver
{
    private HandOver()
    {
    }

    /// <summary>They go from the list to what was given, and the occasion goes on to its next date.</summary>
    /// <param name="Given">What was given, in the order of the list.</param>
    /// <param name="Left">The gifts that stay on the list.</param>
    /// <param name="Occasion">The occasion as it is afterwards.</param>
    public sealed record Done(ImmutableArray<GivenGift> Given, ImmutableArray<Gift> Left, Occasion Occasion) : HandOver;

    /// <summary>There is no such occasion.</summary>
    /// <param name="Nearest">The name of one that is spelled nearly like it; empty when there is no occasion.</param>
    public sealed record NoOccasion(string Nearest) : HandOver;

    /// <summary>No gift on the list is for it.</summary>
    public sealed record NoGifts : HandOver;

    /// <summary>The day has not come yet.</summary>
    /// <param name="Date">That day.</param>
    public sealed record TooEarly(DateOnly Date) : HandOver;

    /// <summary>A gift that is to stay is none of the occasion's.</summary>
    /// <param name="Label">What was named.</param>
    /// <param name="Nearest">The label of a gift for the occasion that is spelled nearly like it.</param>
    public sealed record NoSuchGift(string Label, string Nearest) : HandOver;

    /// <summary>A gift that stays holds one that would be given; its sizes follow from that.</summary>
    /// <param name="Holder">Label of the gift that stays.</param>
    /// <param name="Inside">Label of the gift that would be given.</param>
    public sealed record HoldsOne(string Holder, string Inside) : HandOver;
}
