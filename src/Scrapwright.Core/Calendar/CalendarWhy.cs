using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>What holds a calendar up, and what could be done when time is short: each answer is from a calendar made once more with one thing otherwise.</summary>
public sealed record CalendarWhy
{
    /// <summary>What would help, the most first; empty when nothing that was tried does.</summary>
    public required ImmutableArray<HoldUp> HoldUps { get; init; }

    /// <summary>Ways out when a gift is late: first those that give up no gift, then those that give up the least; of equals the one that brings most gifts in time. Empty when none is late or nothing helps.</summary>
    public required ImmutableArray<CalendarAlternative> Alternatives { get; init; }

    /// <summary>What was tried without gain, in words.</summary>
    public required ImmutableArray<string> NoGain { get; init; }

    /// <summary>What there was no time to try, in words.</summary>
    public required ImmutableArray<string> NotTried { get; init; }

    /// <summary>True when the search alone, with nothing otherwise, found a better calendar: then gains are counted from that one.</summary>
    public required bool LongerSearchHelps { get; init; }
}
