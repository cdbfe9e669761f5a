using System.Collections.Immutable;

namespace Scrapwright.Core.Gifts;

/// <summary>A gift that somebody has been given: what was made, for whom and when.</summary>
public sealed record GivenGift
{
    /// <summary>When it was given.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>Name of the occasion; empty for none.</summary>
    public string Occasion { get; init; } = "";

    /// <summary>Who has it.</summary>
    public required string Recipient { get; init; }

    /// <summary>The recipient's circle then; empty for none.</summary>
    public string Circle { get; init; } = "";

    /// <summary>Key of the design; it may be one that is no longer there.</summary>
    public required string Design { get; init; }

    /// <summary>Options that differed from the design's, by parameter key, as text.</summary>
    public ImmutableSortedDictionary<string, string> Options { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>Anything.</summary>
    public string Note { get; init; } = "";

    /// <summary>A gift of the list, as it was given.</summary>
    /// <param name="gift">The gift.</param>
    /// <param name="date">When.</param>
    public static GivenGift Of(Gift gift, DateOnly date)
    {
        ArgumentNullException.ThrowIfNull(gift);
        return new()
        {
            Date = date,
            Occasion = gift.Occasion,

            // Who got it matters for the years to come; a gift for nobody in particular keeps its label instead.
            Recipient = gift.Recipient.Trim().Length > 0 ? gift.Recipient.Trim() : gift.Label,
            Circle = gift.Circle,
            Design = gift.Design,
            Options = gift.Options,
        };
    }
}
