using System.Collections.Immutable;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar;

/// <summary>All the facts a calendar is made from.</summary>
public sealed record CalendarRequest
{
    /// <summary>The plan whose work is to be done.</summary>
    public required Plan Plan { get; init; }

    /// <summary>When the shop is worked in.</summary>
    public WorkHours Hours { get; init; } = new();

    /// <summary>The time zone where the hours name none: that of the machine the program runs on, told by whoever asks.</summary>
    public required TimeZoneInfo HomeZone { get; init; }

    /// <summary>From when on there is time.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>How many days are looked at, the one of the start counted. [d], 1 to 3660; a year and a day unless said otherwise, our own choice</summary>
    public int Days { get; init; } = 366;

    /// <summary>Since when the pile lies in the shop, for wood that has to settle first; null for the start.</summary>
    public DateTimeOffset? PileSince { get; init; }

    /// <summary>Tasks that are done; what had to be done before them is done too. Names that are no tasks are passed over.</summary>
    public ImmutableArray<DoneTask> Done { get; init; } = [];

    /// <summary>Tasks at a certain time; names that are no tasks, and times that are over, are passed over.</summary>
    public ImmutableArray<PinnedTask> Pinned { get; init; } = [];

    /// <summary>The gifts as they stand now, for their dates and priorities, by label; those that are missing count as in the plan.</summary>
    public ImmutableArray<Gift> Gifts { get; init; } = [];

    /// <summary>How long work took so far, in any order: the maker's own pace.</summary>
    public ImmutableArray<TimeReading> Times { get; init; } = [];

    /// <summary>What can be bought instead of made; for advice, no calendar depends on it.</summary>
    public ImmutableArray<Price> Prices { get; init; } = [];

    /// <summary>The maker's own jigs; for advice too.</summary>
    public ImmutableArray<Jig> Jigs { get; init; } = [];

    /// <summary>What an hour is worth, and the currency of prices; null when nobody said; for advice too.</summary>
    public HourWorth? HourWorth { get; init; }

    /// <summary>The calendar before, to which the new one keeps where it costs nothing; null for none.</summary>
    public WorkCalendar? Before { get; init; }

    /// <summary>A gift of the plan as it stands now; null when there is none of that label.</summary>
    /// <param name="label">Label of the gift.</param>
    public Gift? FindGift(string label) => Gifts.FirstOrDefault(g => g.Label == label) ?? Plan.Request.Gifts.FirstOrDefault(g => g.Label == label);
}
