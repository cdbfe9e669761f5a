using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>How likely a calendar holds: its order is kept, the minutes of its tasks are drawn again and again between what they take when all goes well and when it does not.</summary>
public sealed record CalendarChance
{
    /// <summary>How many times the work was gone through.</summary>
    public required int Runs { get; init; }

    /// <summary>How often is asked for: 950 for nineteen times in twenty. [‰]</summary>
    public required int AskedPerMille { get; init; }

    /// <summary>Every gift with work left, in the calendar's order.</summary>
    public required ImmutableArray<ReadyChance> Gifts { get; init; }

    /// <summary>All of them together.</summary>
    public required ReadyChance All { get; init; }

    /// <summary>A gift's chance; null for one that has no work left, or is none.</summary>
    /// <param name="gift">Label of the gift.</param>
    public ReadyChance? Find(string gift) => Gifts.FirstOrDefault(g => g.Gift == gift);
}
