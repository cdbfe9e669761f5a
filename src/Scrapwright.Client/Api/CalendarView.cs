using System.Collections.Immutable;
using Scrapwright.Core.Calendar;

namespace Scrapwright.Client.Api;

/// <summary>The latest calendar, what the maker has marked in it, and what has changed since it was made.</summary>
public sealed record CalendarView
{
    /// <summary>What came of the latest asking.</summary>
    public required CalendarStanding Standing { get; init; }

    /// <summary>Why it is impossible; empty otherwise.</summary>
    public ImmutableArray<ScheduleReason> Reasons { get; init; } = [];

    /// <summary>The moment of the answer by the server's clock.</summary>
    public required DateTimeOffset Now { get; init; }

    /// <summary>Whether there is a plan to make a calendar of.</summary>
    public required bool HasPlan { get; init; }

    /// <summary>What the maker has marked.</summary>
    public required CalendarMarks Marks { get; init; }

    /// <summary>The calendar; null when there is none.</summary>
    public WorkCalendar? Calendar { get; init; }

    /// <summary>Its clock; null when there is none.</summary>
    public ShopClock? Clock { get; init; }

    /// <summary>True when the latest plan is another one than it was made of.</summary>
    public bool PlanChanged { get; init; }

    /// <summary>True when the shop's hours are others than it was made for.</summary>
    public bool HoursChanged { get; init; }

    /// <summary>True when the maker's pace at something is by a twentieth or more another than it was made with.</summary>
    public bool TimesChanged { get; init; }

    /// <summary>True when a gift in it is due on another day now.</summary>
    public bool DatesChanged { get; init; }

    /// <summary>True when marks are others than it was made with.</summary>
    public bool MarksChanged { get; init; }
}
