using System.Collections.Immutable;
using Scrapwright.Core.Calendar;

namespace Scrapwright.Client.Calendar;

/// <summary>Tasks that are being moved: where they would be, what else would move, and which gifts would become late. Nothing is kept by it.</summary>
public sealed class MoveTrial(WorkCalendar calendar, ShopClock clock, ImmutableArray<CalendarTask> line)
{
    /// <summary>The calendar as it is kept.</summary>
    public WorkCalendar Before { get; } = calendar;

    /// <summary>The calendar as it would be; the one before while nothing was moved.</summary>
    public WorkCalendar After { get; private set; } = calendar;

    /// <summary>All tasks of the line that was chosen.</summary>
    public ImmutableArray<CalendarTask> Line { get; } = line;

    /// <summary>Ids of the tasks that are moved, in order.</summary>
    public ImmutableArray<string> Tasks { get; private set; } = [.. line.Select(t => t.Task.Id)];

    /// <summary>Why the last move was not possible; empty when it was.</summary>
    public ImmutableArray<ScheduleReason> Refused { get; private set; } = [];

    /// <summary>True when they are somewhere else than before.</summary>
    public bool IsMoved => !ReferenceEquals(Before, After);

    /// <summary>When the first of them starts.</summary>
    public DateTimeOffset Start => After.Tasks.Where(t => Tasks.Contains(t.Task.Id)).Min(t => t.Start);

    /// <summary>What else moves.</summary>
    public ImmutableArray<CalendarTask> Others { get; private set; } = [];

    /// <summary>Gifts that are late now and were not before.</summary>
    public ImmutableArray<CalendarGift> LateNow => [.. After.Gifts.Where(g => g.IsLate && Before.Gifts.All(b => b.Gift != g.Gift || !b.IsLate))];

    /// <summary>Chooses which tasks of the line are moved; all go back.</summary>
    /// <param name="task">Id of one; empty for all of the line.</param>
    public void Choose(string task)
    {
        Tasks = task.Length == 0 ? [.. Line.Select(t => t.Task.Id)] : [task];
        PutBack();
    }

    /// <summary>To the nearest window later or earlier in which they fit.</summary>
    /// <param name="isLater">Which.</param>
    /// <param name="now">Nothing is put before this moment.</param>
    public void Step(bool isLater, DateTimeOffset now) => Take(CalendarMoves.ToNextWindow(Before, clock, Tasks, isLater, now, Start));

    /// <summary>To a day.</summary>
    /// <param name="day">The day.</param>
    /// <param name="now">Nothing is put before this moment.</param>
    public void Drop(DateOnly day, DateTimeOffset now) => Take(CalendarMoves.ToDay(Before, clock, Tasks, day, now));

    /// <summary>As it was.</summary>
    public void PutBack() => (After, Others, Refused) = (Before, [], []);

    private void Take(CalendarOutcome outcome)
    {
        Refused = outcome is CalendarOutcome.Impossible impossible ? impossible.Reasons : [];
        if (outcome is not CalendarOutcome.Dated dated) return;
        After = dated.Calendar;
        Others = CalendarMoves.AlsoMoved(Before, After, Tasks);
    }
}
