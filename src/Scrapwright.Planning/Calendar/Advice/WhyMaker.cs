using System.Collections.Immutable;
using System.Diagnostics;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Calendar.Advice;

/// <summary>Tries one variant of a request after the other.</summary>
internal sealed class WhyMaker
{
    // Less time than this finds nothing that the order of the calendar does not give already: our own choice.
    private const double LeastSeconds = 0.2;

    // Definition: minutes of a day.
    private const int Day = 1440;

    private readonly CalendarRequest request;
    private readonly PlanLimits limits;
    private readonly IProgress<string>? progress;
    private readonly CancellationToken cancellationToken;
    private readonly CalendarVariant[] variants;
    private readonly ImmutableArray<string> order;
    private readonly Stopwatch clock = Stopwatch.StartNew();
    private readonly List<(CalendarVariant Variant, WorkCalendar Calendar)> gains = [];
    private readonly List<string> noGain = [];
    private readonly List<string> notTried = [];
    private WorkCalendar now;

    internal WhyMaker(CalendarRequest request, WorkCalendar calendar, PlanLimits limits, IProgress<string>? progress, CancellationToken cancellationToken)
    {
        (this.request, now, this.limits, this.progress, this.cancellationToken) = (request, calendar, limits, progress, cancellationToken);
        variants = [.. new CalendarVariants(request, calendar).All()];
        order = [.. calendar.Schedule.Tasks.OrderBy(t => t.Start).Select(t => t.Task)];
    }

    internal async Task<CalendarWhy> MakeAsync()
    {
        var first = now;
        if (await FindAsync(request with { Before = null }, made => made, Share(0)) is { } again && IsBetter(again, now)) now = again;
        for (var i = 0; i < variants.Length; i++) await TryAsync(variants[i], Share(i + 1));
        return new()
        {
            HoldUps = [.. gains.Where(g => !g.Variant.IsForDatesOnly).OrderBy(g => g.Calendar, Comparer<WorkCalendar>.Create(Compare)).Select(g => HoldUp(g.Variant, g.Calendar))],
            Alternatives =
            [
                .. gains.Select(g => Alternative(g.Variant, g.Calendar)).Where(a => !a.InTime.IsEmpty)
                    .OrderByDescending(a => a.LeftOutPriority ?? int.MaxValue).ThenByDescending(a => a.InTime.Length).ThenBy(a => a.LateThen.Length),
            ],
            NoGain = [.. noGain],
            NotTried = [.. notTried],
            LongerSearchHelps = !ReferenceEquals(first, now),
        };
    }

    private async Task TryAsync(CalendarVariant variant, double seconds)
    {
        if (cancellationToken.IsCancellationRequested || seconds < LeastSeconds)
        {
            notTried.Add(variant.What);
            return;
        }

        progress?.Report(variant.What);
        var found = variant.Replan is { } plan
            ? await PlannedAsync(plan, seconds / 2) is { } changed ? await FindAsync(changed, made => made, seconds / 2) : null
            : await FindAsync(variant.Request, made => Changed(variant, made), seconds);
        if (found is not null && Gains(found)) gains.Add((variant, found));
        else noGain.Add(variant.What);
    }

    // What is left, in equal parts, but enough for each while it lasts; counted in work nothing is saved up.
    private double Share(int tried)
    {
        if (limits.Deterministic) return limits.Seconds / (variants.Length + 1);
        var left = Math.Max(0, limits.Seconds - clock.Elapsed.TotalSeconds);
        return Math.Min(left, Math.Max(LeastSeconds, left / (variants.Length + 1 - tried)));
    }

    // With a plan in which all that was made is still made; null when there is none.
    private async Task<CalendarRequest?> PlannedAsync(PlanRequest plan, double seconds)
    {
        if (await Planner.PlanAsync(plan, limits with { Seconds = seconds }, request.Plan, null, cancellationToken) is not PlanOutcome.Planned { Plan: var planned }) return null;
        var made = planned.Made.Select(m => m.Gift).ToHashSet(StringComparer.Ordinal);
        return request.Plan.Made.All(m => made.Contains(m.Gift)) ? request with { Plan = planned, Before = null } : null;
    }

    // The better of what the search finds and of the calendar's own order, which with more of something is seldom worse.
    private async Task<WorkCalendar?> FindAsync(CalendarRequest changed, Func<CalendarProblem, CalendarProblem?> change, double seconds)
    {
        if (seconds <= 0 || CalendarProblem.Make(changed) is not CalendarMaking.Made { Problem: var made } || change(made) is not { } problem) return null;
        var searched = Calendar(problem, await Scheduler.SolveAsync(problem.Schedule, limits with { Seconds = seconds }, null, cancellationToken));
        // What a variant adds comes first: the rest waits for it.
        var known = made.Schedule.Tasks.Select(t => t.Id).ToHashSet(StringComparer.Ordinal);
        var ordered = Calendar(problem, ScheduleBuilder.InOrder(problem.Schedule, [.. problem.Schedule.Tasks.Select(t => t.Id).Where(id => !known.Contains(id)), .. order]));
        return searched is null || (ordered is not null && IsBetter(ordered, searched)) ? ordered : searched;
    }

    private static CalendarProblem? Changed(CalendarVariant variant, CalendarProblem made) =>
        variant.LeftOut is { } left ? Without(made, left.Label) : variant.Change is { } change ? change(made) : made;

    private static WorkCalendar? Calendar(CalendarProblem problem, ScheduleOutcome outcome) =>
        CalendarOutcome.Of(problem, outcome) is CalendarOutcome.Dated dated ? dated.Calendar : null;

    // Work for this gift alone is dropped; what it shares with others is done all the same.
    private static CalendarProblem Without(CalendarProblem problem, string gift)
    {
        var dropped = problem.Work.Tasks.Where(t => t.Gifts is [var only] && only == gift).Select(t => t.Id).ToHashSet(StringComparer.Ordinal);
        return problem with
        {
            Schedule = problem.Schedule with
            {
                Tasks = problem.Schedule.Tasks.RemoveAll(t => dropped.Contains(t.Id)),
                Links = problem.Schedule.Links.RemoveAll(l => dropped.Contains(l.Before) || dropped.Contains(l.After)),
                Deliveries = problem.Schedule.Deliveries.RemoveAll(d => d.Id == gift),
            },
        };
    }

    // Hours and less than a day are no gain to tell: an evening is the least that a maker sees.
    private bool Gains(WorkCalendar other) => IsBetter(other, now) && (InTime(other).Any() || HoursLate(now) - HoursLate(other) >= Day / 60 || SoonerDays(other) > 0);

    private static bool IsBetter(WorkCalendar one, WorkCalendar other) => Compare(one, other) < 0;

    // Hours late by priority, then all ready: the first levels of every schedule. A priority that has no gift any more has none late.
    private static int Compare(WorkCalendar one, WorkCalendar other)
    {
        var priorities = Late(one).Concat(Late(other)).Select(l => l.Priority!.Value).Distinct().Order();
        foreach (var priority in priorities)
        {
            var order = Late(one).Where(l => l.Priority == priority).Sum(l => l.Value).CompareTo(Late(other).Where(l => l.Priority == priority).Sum(l => l.Value));
            if (order != 0) return order;
        }

        return AllReady(one).CompareTo(AllReady(other));
    }

    private static IEnumerable<ScheduleLevel> Late(WorkCalendar calendar) => calendar.Schedule.Levels.Where(l => l.Kind == ScheduleLevelKind.Lateness);

    private static long HoursLate(WorkCalendar calendar) => Late(calendar).Sum(l => l.Value);

    // By the minute: beside a calendar before the level counts in days.
    private static long AllReady(WorkCalendar calendar)
    {
        var ends = calendar.Schedule.Tasks.ToDictionary(t => t.Task, t => t.End, StringComparer.Ordinal);
        return ends.Values.Concat(calendar.Problem.Deliveries.SelectMany(d => d.Last).Select(l => ends[l.Task] + l.WaitMinutes)).DefaultIfEmpty(0).Max();
    }

    private int SoonerDays(WorkCalendar other) => (int)Math.Floor((AllReady(now) - AllReady(other)) / (double)Day);

    private IEnumerable<string> InTime(WorkCalendar other)
    {
        var ready = other.Gifts.Where(g => !g.IsLate && other.Problem.Deliveries.Any(d => d.Id == g.Gift)).Select(g => g.Gift).ToHashSet(StringComparer.Ordinal);
        return now.Gifts.Where(g => g.IsLate && ready.Contains(g.Gift)).Select(g => g.Gift);
    }

    private WorkHours? HoursOf(CalendarVariant variant) => ReferenceEquals(variant.Request.Hours, request.Hours) ? null : variant.Request.Hours;

    private HoldUp HoldUp(CalendarVariant variant, WorkCalendar other) => new()
    {
        Kind = variant.Kind,
        What = variant.What,
        Hours = HoursOf(variant),
        SoonerDays = SoonerDays(other),
        InTime = [.. InTime(other)],
        HoursLessLate = HoursLate(now) - HoursLate(other),
        Levels = other.Schedule.Levels,
    };

    private CalendarAlternative Alternative(CalendarVariant variant, WorkCalendar other) => new()
    {
        Kind = variant.Kind,
        Question = variant.Question + "?",
        Hours = HoursOf(variant),
        LeftOut = variant.LeftOut?.Label ?? "",
        LeftOutPriority = variant.LeftOut?.Priority,
        InTime = [.. InTime(other)],
        LateThen = [.. other.Gifts.Where(g => g.IsLate).Select(g => g.Gift)],
    };
}
