using System.Collections.Immutable;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Calendar;

/// <summary>Turns a request for a calendar into a problem of fitting tasks into time.</summary>
internal sealed class CalendarProblemMaker
{
    // Beside a calendar before nobody would have all moved to be ready sooner by less than two days. Our own choice. [min]
    private const int NoticedMinutes = 2880;

    // When all is ready counts in whole hours: for less nobody sets up once more. Our own choice.
    private const int HourMinutes = 60;

    private readonly CalendarRequest request;
    private readonly WorkWindows windows;
    private readonly ClampPool clamps;
    private readonly Climate? climate;
    private readonly WorkTasks work;
    private readonly DoneTasks done;

    internal CalendarProblemMaker(CalendarRequest request, WorkWindows windows, PlanIndex index)
    {
        (this.request, this.windows) = (request, windows);
        clamps = new(Shop);
        climate = ShopClimates.Find(Shop, "");
        work = WorkTasks.Of(index, new WorkTaskRules
        {
            GlueCelsius = GlueCelsius(),
            LongestMachineMinutes = Usual(windows.Machines),
            LongestMinutes = Usual(windows.All),
            Paces = ShopPaces.Of(request.Times),
        });
        done = new(work, request.Done, windows);
    }

    private Shop Shop => request.Plan.Request.Shop;

    private IEnumerable<WorkTask> Open => work.Tasks.Where(t => !done.Contains(t.Id));

    internal CalendarMaking Make()
    {
        var hours = Open.DistinctBy(t => t.Hours).ToDictionary(t => t.Hours, HoursOf, StringComparer.Ordinal);
        ImmutableArray<ScheduleReason> reasons = [.. Open.DistinctBy(t => t.Hours).Where(t => hours[t.Hours].IsEmpty).Select(NoHours), .. Open.Where(LacksClamps).Select(NoClamps)];
        return reasons.IsEmpty
            ? new CalendarMaking.Made(new() { Request = request, Work = work, Windows = windows, Schedule = Problem(hours) })
            : new CalendarMaking.Refused(reasons);
    }

    private ScheduleProblem Problem(Dictionary<string, ImmutableArray<ScheduleWindow>> hours)
    {
        var stubs = done.Stubs(clamps);
        var used = Open.Select(t => t.Setting).ToHashSet(StringComparer.Ordinal);
        var tasks = Open.Select(Task).Concat(stubs).ToImmutableArray();
        var ids = tasks.Select(t => t.Id).ToHashSet(StringComparer.Ordinal);
        return new()
        {
            HorizonMinutes = windows.HorizonMinutes,
            Resources =
            [
                new(CalendarProblem.Maker, Math.Max(1, request.Hours.Makers)),
                .. Open.Select(t => t.Station).Distinct().Order().Select(s => new ScheduleResource(TaskNames.Word(s), 1)),
                .. clamps.Resources,
            ],
            Tasks = tasks,
            Links = [.. work.Links.Where(l => ids.Contains(l.Before) && ids.Contains(l.After)), .. done.Links()],
            Hours = [.. hours.OrderBy(h => h.Key, StringComparer.Ordinal).Select(h => new ScheduleHours(h.Key, h.Value))],
            SetUps = [.. work.Settings.Where(s => used.Contains(s.Key)).Select(s => new ScheduleSetUp(s.Key, TaskNames.Word(s.Station), CalendarProblem.Maker, s.Minutes))],
            Deliveries = [.. work.Gifts.Select(Delivery).Where(d => !d.Last.IsEmpty)],
            Before = Before(ids),
            SetUpMinutesBefore = request.Before?.Settings.Where(s => s.Start >= windows.Start).Sum(s => s.Setting.Minutes),
            ReadyStepMinutes = ReadyStep,
            ReadyOffsetMinutes = ReadyBefore(ids) % ReadyStep,
        };
    }

    private ScheduleTask Task(WorkTask task) => new()
    {
        Id = task.Id,
        Minutes = task.Minutes,
        Needs = [new(CalendarProblem.Maker, 1), new(TaskNames.Word(task.Station), 1), .. clamps.Needs(task.Clamps)],
        Hours = task.Hours,
        SetUp = task.Setting,
        EarliestStart = Math.Max(done.EarliestStart(task.Id), task.SettleMinutes == 0 ? 0 : windows.MinuteOf(request.PileSince ?? windows.Start) + task.SettleMinutes),
        FixedStart = request.Pinned.Where(p => p.Task == task.Id).Select(p => (int?)windows.MinuteOf(p.Start)).LastOrDefault(minute => minute >= 0),
    };

    // The gift is to be there when its day begins: nobody works at it on the day itself.
    private ScheduleDelivery Delivery(GiftReady ready)
    {
        var gift = request.FindGift(ready.Gift);
        int? due = gift?.Due is { } day ? windows.MinuteOf(day) : null;
        int? wanted = gift?.Due is { } date ? windows.MinuteOf(date.AddDays(-CalendarProblem.SlackDays)) : null;
        // Priorities are 1 to 9 by definition; what the list does not know any more comes last.
        return new(ready.Gift, [.. ready.Last.SelectMany(done.Last)], due, Math.Clamp(gift?.Priority ?? 9, 1, 9), wanted);
    }

    private int ReadyStep => request.Before is null ? HourMinutes : NoticedMinutes;

    // When all was ready in the calendar before.
    private int ReadyBefore(HashSet<string> ids) => request.Before is not { } before ? 0 :
        before.Tasks.Where(t => ids.Contains(t.Task.Id)).Select(t => t.End).Concat(before.Gifts.Select(g => g.ReadyAt).OfType<DateTimeOffset>()).Select(windows.MinuteOf).Append(0).Max();

    private ImmutableArray<ScheduledTask> Before(HashSet<string> ids) => request.Before is not { } before ? [] :
    [
        .. before.Tasks.Where(t => ids.Contains(t.Task.Id) && t.Start >= windows.Start)
            .Select(t => new ScheduledTask(t.Task.Id, windows.MinuteOf(t.Start), windows.MinuteOf(t.End))),
    ];

    private ImmutableArray<ScheduleWindow> HoursOf(WorkTask task)
    {
        var hours = task.NeedsMachine ? windows.Machines : windows.All;
        return task.LeastCelsius is null || climate is null ? hours : windows.InMonths(hours, month => IsWarm(task, climate, month));
    }

    private static bool IsWarm(WorkTask task, Climate climate, int month) =>
        climate.Months[month - 1].TemperatureCelsius is var celsius && celsius >= task.LeastCelsius && celsius <= (task.MostCelsius ?? double.PositiveInfinity);

    // Glue sets slowest in the coldest month of those until the last gift is due in which it sets at all.
    private double? GlueCelsius()
    {
        if (climate is null || GlueTable.Find(Shop.Glue) is not { } glue) return null;
        var due = request.Plan.Made.Select(m => request.FindGift(m.Gift)?.Due).Max();
        var warm = windows.MonthsUntil(due is { } day ? windows.MinuteOf(day) : windows.HorizonMinutes)
            .Select(month => climate.Months[month - 1].TemperatureCelsius).Where(celsius => celsius >= glue.MinimumCelsius.Least).ToArray();
        return warm.Length == 0 ? glue.MinimumCelsius.Least : warm.Min();
    }

    // The window in the middle of all by length: half of them are at least so long.
    private static int? Usual(ImmutableArray<ScheduleWindow> windows) => windows.IsEmpty ? null : windows.Select(w => w.Minutes).Order().ElementAt(windows.Length / 2);

    private ScheduleReason NoHours(WorkTask task)
    {
        var isHour = !(task.NeedsMachine ? windows.Machines : windows.All).IsEmpty;
        return isHour
            ? new(task.Title, $"{climate?.Title ?? ""}: no month until {windows.At(windows.HorizonMinutes - 1):yyyy-MM-dd} is warm enough or cool enough on average", $"air of {task.LeastCelsius} °C or more{(task.MostCelsius is { } most ? $", at most {most} °C" : "")}; a heated place, or a later date")
            : new(task.Title, $"no hours{(task.NeedsMachine ? " in which machines may run" : "")} until {windows.At(windows.HorizonMinutes - 1):yyyy-MM-dd}", "working hours");
    }

    private bool LacksClamps(WorkTask task) => task.Clamps is { } needed && clamps.Reaching(needed.Reach) < needed.Count;

    private ScheduleReason NoClamps(WorkTask task) => new(
        task.Title, $"{clamps.Reaching(task.Clamps!.Reach)} clamps that reach {task.Clamps.Reach.ToExactText(Shop.Unit)}", $"{task.Clamps.Count} clamps that reach so far");
}
