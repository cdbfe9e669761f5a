using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Plans;

namespace Scrapwright.Cli.Output;

/// <summary>A calendar as lines of text.</summary>
internal static class CalendarText
{
    /// <summary>The whole calendar: gifts and their days, the evenings, what to buy by when, how good it is.</summary>
    internal static IEnumerable<string> Lines(WorkCalendar calendar, Plan plan)
    {
        var late = calendar.Gifts.Count(g => g.IsLate);
        yield return $"{plan.Request.Workshop}: {Counted(calendar.Tasks.Length, "task")} in {Counted(calendar.Evenings.Length, "evening")}, by the clock of {calendar.TimeZone}. "
            + (late == 0 ? "Everything is ready in time." : $"{Counted(late, "gift")} late.");
        foreach (var gift in calendar.Gifts) yield return $"  {gift.Gift}: {Ready(gift)}";
        foreach (var evening in calendar.Evenings)
        {
            var tonight = Tonight.Of(calendar, evening);
            yield return $"{Day(evening.Start)}, {Clock(evening.Start)} to {Clock(evening.End)}:";
            foreach (var line in WorkLines.Of(calendar, evening)) yield return $"  {Clock(line.Start)}  {line.Title}";
            foreach (var task in tonight.Overnight) yield return $"  leave alone until {Moment(task.FreeAgain)}: {task.Task.Title}";
        }

        var buys = calendar.BuyBy();
        if (!buys.IsEmpty) yield return "To buy:";
        foreach (var buy in buys) yield return $"  {PlanText.Shopping(buy.Item, plan.Request.Shop)}{(buy.Before is { } before ? $", before {Moment(before)}" : "")}";
        yield return "How good it is:";
        foreach (var level in calendar.Schedule.Levels) yield return $"  {Figure(level)}, {Verdict(level)}";
    }

    /// <summary>Why there is no calendar.</summary>
    internal static IEnumerable<string> Reasons(ImmutableArray<ScheduleReason> reasons) =>
        reasons.Select(r => $"  {r.Where}: found {r.Found}, expected {r.Expected}.");

    /// <summary>One level and its value.</summary>
    internal static string Figure(ScheduleLevel level) => level.Kind switch
    {
        ScheduleLevelKind.Lateness => $"late, priority {level.Priority}: {Counted(level.Value, "hour")}",
        ScheduleLevelKind.AllReady => $"all ready after {Long(level.Value)}",
        ScheduleLevelKind.Slack => $"short of {CalendarProblem.SlackDays} days to spare, priority {level.Priority}: {Counted(level.Value, "day")}",
        ScheduleLevelKind.MoreSetUps => $"more setting up than before: {Counted(level.Value, "minute")}",
        ScheduleLevelKind.SetUps => $"setting up: {Counted(level.Value, "minute")}",
        ScheduleLevelKind.Moved => $"moved to another evening: {Counted(level.Value, "task")}",
        _ => throw new ArgumentOutOfRangeException(nameof(level), level.Kind, "A level of another kind."),
    };

    private static string Verdict(ScheduleLevel level) => level.IsProven
        ? "the least there can be"
        : level.Kind == ScheduleLevelKind.AllReady
            ? $"at least {Long(level.Bound)} needed, gap {Percent(level)}"
            : $"at least {level.Bound} needed";

    private static string Percent(ScheduleLevel level) => ((level.Value - level.Bound) * 100.0 / Math.Max(1, level.Bound)).ToString("0.0", CultureInfo.InvariantCulture) + " %";

    private static string Ready(CalendarGift gift)
    {
        var due = gift.Due is { } day ? $", due {day.ToString("dddd d MMMM yyyy", CultureInfo.InvariantCulture)}" : "";
        if (gift.ReadyAt is not { } ready) return $"ready already{due}";
        var slack = gift.SlackDays switch
        {
            null => "",
            < 0 => $" (LATE by {Counted(-gift.SlackDays.Value, "day")})",
            { } days => $" ({Counted(days, "day")} to spare)",
        };
        return $"ready {Moment(ready)}{due}{slack}";
    }

    private static string Counted(long count, string one) => $"{count} {one}{(count == 1 ? "" : "s")}";

    // Days and hours: what a level counts in minutes.
    private static string Long(long minutes) => $"{minutes / 1440} d {minutes % 1440 / 60} h {minutes % 60} min";

    private static string Day(DateTimeOffset moment) => moment.ToString("dddd d MMMM yyyy", CultureInfo.InvariantCulture);

    private static string Clock(DateTimeOffset moment) => moment.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Moment(DateTimeOffset moment) => moment.ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture);
}
