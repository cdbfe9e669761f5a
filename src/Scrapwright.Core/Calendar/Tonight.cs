using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>The window of a calendar that is now or comes next, for whoever stands in the shop: what is beside its <see cref="WorkLines"/>.</summary>
public sealed record Tonight
{
    /// <summary>When it begins.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>When it is over.</summary>
    public required DateTimeOffset End { get; init; }

    /// <summary>True when it has begun.</summary>
    public required bool IsNow { get; init; }

    /// <summary>What to lay out besides wood and clamps, each thing once, in the order in which it is needed.</summary>
    public required ImmutableArray<string> LayOut { get; init; }

    /// <summary>Clamps to lay out: as many as hold at the same time at most, those still on from before among them, and the farthest that one of tonight's has to reach; null for none.</summary>
    public required TaskClamps? Clamps { get; init; }

    /// <summary>Ids of the pieces that are worked, each once, in the order in which they are needed.</summary>
    public required ImmutableArray<string> Pieces { get; init; }

    /// <summary>Tasks of before whose glue cures or whose finish dries when it begins: not to be touched until they are free.</summary>
    public required ImmutableArray<CalendarTask> StillDrying { get; init; }

    /// <summary>Its own tasks whose glue cures or whose finish dries when it is over: what to leave in its place overnight.</summary>
    public required ImmutableArray<CalendarTask> Overnight { get; init; }

    /// <summary>The window that is at a moment, or the next in which something is done; null when nothing is left to do.</summary>
    /// <param name="calendar">The calendar.</param>
    /// <param name="now">The moment.</param>
    public static Tonight? Of(WorkCalendar calendar, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(calendar);
        return calendar.Evenings.FirstOrDefault(e => e.End > now) is { } evening ? Of(calendar, evening, now) : null;
    }

    /// <summary>A certain window of a calendar, as it is when it begins.</summary>
    /// <param name="calendar">The calendar.</param>
    /// <param name="evening">One of its windows.</param>
    public static Tonight Of(WorkCalendar calendar, CalendarEvening evening)
    {
        ArgumentNullException.ThrowIfNull(calendar);
        ArgumentNullException.ThrowIfNull(evening);
        return Of(calendar, evening, evening.Start);
    }

    private static Tonight Of(WorkCalendar calendar, CalendarEvening evening, DateTimeOffset now)
    {
        CalendarTask[] tasks = [.. calendar.Tasks.Where(t => evening.Tasks.Contains(t.Task.Id))];
        return new()
        {
            Start = evening.Start,
            End = evening.End,
            IsNow = evening.Start <= now,
            Clamps = ClampsOf(calendar, tasks),
            LayOut = [.. tasks.SelectMany(t => t.Task.LayOut).Distinct()],
            Pieces = [.. tasks.SelectMany(t => t.Task.Pieces).Distinct()],
            StillDrying = [.. calendar.Tasks.Where(t => t.End <= evening.Start && t.FreeAgain > evening.Start)],
            Overnight = [.. tasks.Where(t => t.FreeAgain > evening.End)],
        };
    }

    // It is most just when one more is put on.
    private static TaskClamps? ClampsOf(WorkCalendar calendar, CalendarTask[] tasks)
    {
        CalendarTask[] gluings = [.. tasks.Where(t => t.Task.Clamps is not null)];
        if (gluings.Length == 0) return null;
        var most = gluings.Max(now => calendar.Tasks.Where(t => t.Task.Clamps is { } held && t.Start <= now.Start && t.End.AddMinutes(held.HeldMinutes) > now.Start).Sum(t => t.Task.Clamps!.Count));
        return new(gluings.Max(t => t.Task.Clamps!.Reach), most, gluings.Max(t => t.Task.Clamps!.HeldMinutes));
    }
}
