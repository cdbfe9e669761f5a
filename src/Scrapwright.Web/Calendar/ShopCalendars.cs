using System.Collections.Immutable;
using System.Text.Json;
using Scrapwright.Client.Api;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Audit;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.ICalendar;
using Scrapwright.Planning;
using Scrapwright.Planning.Calendar.Advice;
using Scrapwright.Storage;
using Scrapwright.Web.Planning;

namespace Scrapwright.Web.Calendar;

/// <summary>Makes, keeps and shows the calendars of the workshop. What an audit rejects is neither kept nor shown.</summary>
internal sealed class ShopCalendars(WorkshopStore store, TimeProvider time) : IDisposable
{
    private readonly SemaphoreSlim making = new(1, 1);
    private volatile KnownChance? chance;

    public void Dispose() => making.Dispose();

    /// <summary>The latest calendar and how it stands.</summary>
    internal async Task<CalendarView> ViewAsync(CancellationToken cancellationToken)
    {
        var stored = await store.FindLatestCalendarAsync(cancellationToken);
        var marks = await store.GetMarksAsync(cancellationToken);
        var plan = await store.FindLatestFingerprintAsync(cancellationToken);
        var view = new CalendarView { Standing = CalendarStanding.None, Now = time.GetUtcNow(), HasPlan = plan is not null, Marks = marks };
        if (stored is null || FindSound(stored) is not { } calendar) return view;
        var hours = await store.GetHoursAsync(cancellationToken);
        var due = (await store.GetDatedGiftsAsync(cancellationToken)).ToDictionary(g => g.Label, g => g.Due, StringComparer.Ordinal);
        return view with
        {
            Standing = CalendarStanding.Dated,
            Calendar = calendar,
            Clock = ClockOf(calendar),
            PlanChanged = calendar.Fingerprint != plan,
            HoursChanged = !IsSame(hours, calendar.Hours),
            TimesChanged = ShopPaces.Of(await TimesAsync(cancellationToken)).IsFarFrom(ShopPaces.Of(calendar.Times)),
            DatesChanged = calendar.Gifts.Any(g => due.TryGetValue(g.Gift, out var now) && now != g.Due),
            MarksChanged = !IsSame(marks, stored.Marks),
        };
    }

    /// <summary>Makes a calendar and keeps it; null while another is being made.</summary>
    internal async Task<CalendarView?> MakeAsync(Plan plan, MakeCalendar asked, CancellationToken cancellationToken)
    {
        if (!await making.WaitAsync(0, cancellationToken)) return null;
        try
        {
            var marks = await store.GetMarksAsync(cancellationToken);
            var before = await store.FindLatestCalendarAsync(cancellationToken);
            var hours = await store.GetHoursAsync(cancellationToken);
            var request = await AboutAsync(plan, marks, cancellationToken) with
            {
                Hours = hours,
                Start = asked.FirstDay is { } day ? ShopZones.Moment(ShopZones.Find(hours.TimeZone, TimeZoneInfo.Local) ?? TimeZoneInfo.Local, day.ToDateTime(TimeOnly.MinValue)) : asked.Start ?? time.GetUtcNow(),
                Times = await TimesAsync(cancellationToken),
                Before = before is null ? null : FindSound(before),
            };
            var outcome = await Task.Run(() => CalendarMaker.MakeAsync(request, new PlanLimits { Seconds = asked.Seconds }, null, cancellationToken), cancellationToken);
            if (outcome is CalendarOutcome.Dated dated) await store.AddCalendarAsync(dated.Calendar, marks, cancellationToken);
            var view = await ViewAsync(cancellationToken);
            return outcome switch
            {
                CalendarOutcome.Dated => view,
                CalendarOutcome.Impossible impossible => view with { Standing = CalendarStanding.Impossible, Reasons = impossible.Reasons },
                CalendarOutcome.Unfinished => view with { Standing = CalendarStanding.Unfinished },
                _ => throw new InvalidOperationException("An outcome of another kind."),
            };
        }
        finally
        {
            making.Release();
        }
    }

    /// <summary>What a calendar was made from, days and all.</summary>
    internal async Task<CalendarRequest> RequestOfAsync(WorkCalendar calendar, Plan plan, CalendarMarks marks, CancellationToken cancellationToken)
    {
        var due = calendar.Gifts.ToDictionary(g => g.Gift, g => g.Due, StringComparer.Ordinal);
        var request = await AboutAsync(plan, marks, cancellationToken);
        return request with
        {
            Hours = calendar.Hours,
            Start = calendar.Start,
            Times = calendar.Times,
            Gifts = [.. request.Gifts.Concat(plan.Request.Gifts).DistinctBy(g => g.Label).Select(g => due.TryGetValue(g.Label, out var day) ? g with { Due = day } : g)],
        };
    }

    /// <summary>How likely the latest calendar holds; null when there is none. Kept until there is another one.</summary>
    internal async Task<CalendarChance?> ChanceAsync(CancellationToken cancellationToken)
    {
        if (await store.FindLatestCalendarAsync(cancellationToken) is not { } stored) return null;
        if (chance is { } known && known.Calendar == stored.Id) return known.Chance;
        if (FindSound(stored) is not { } calendar) return null;
        var made = await Task.Run(() => CalendarChances.Of(calendar, null, cancellationToken), cancellationToken);
        chance = new(stored.Id, made);
        return made;
    }

    /// <summary>Keeps marks; the wrong ones are told instead.</summary>
    internal async Task<ImmutableArray<FieldProblem>> PutMarksAsync(CalendarMarks marks, CancellationToken cancellationToken)
    {
        var kept = await store.GetMarksAsync(cancellationToken);
        var calendar = await FindLatestAsync(cancellationToken);
        var problems = MarkChecks.Of(marks, kept, calendar, calendar is null ? null : ClockOf(calendar), time.GetUtcNow());
        if (problems.IsEmpty) await store.PutMarksAsync(marks, cancellationToken);
        return problems;
    }

    /// <summary>The latest calendar that holds, or null.</summary>
    internal async Task<WorkCalendar?> FindLatestAsync(CancellationToken cancellationToken) =>
        await store.FindLatestCalendarAsync(cancellationToken) is { } stored ? FindSound(stored) : null;

    /// <summary>Moves tasks of a calendar, pins them there and keeps both; what does not fit is told instead.</summary>
    internal async Task<CalendarOutcome> MoveAsync(WorkCalendar calendar, MoveTasks asked, CancellationToken cancellationToken)
    {
        var clock = ClockOf(calendar);
        var outcome = CalendarMoves.Move(calendar, clock, asked.Tasks, clock.MinuteOf(asked.Start));
        if (outcome is not CalendarOutcome.Dated dated) return outcome;
        var pins = dated.Calendar.Tasks.Where(t => asked.Tasks.Contains(t.Task.Id)).Select(t => new PinnedTask(t.Task.Id, t.Start));
        var marks = (await store.GetMarksAsync(cancellationToken)).WithPinned(pins);
        await store.AddCalendarAsync(dated.Calendar, marks, cancellationToken);
        await store.PutMarksAsync(marks, cancellationToken);
        return outcome;
    }

    /// <summary>The latest calendar as a file for a phone, or null. The phone may have any of those before: all their evenings that are free now are cancelled.</summary>
    internal async Task<string?> FileAsync(CancellationToken cancellationToken)
    {
        WorkCalendar[] sound = [.. (await store.GetCalendarsAsync(cancellationToken)).Select(FindSound).OfType<WorkCalendar>()];
        if (sound is not [var latest, .. var former]) return null;
        var before = former.Length == 0 ? null : former[0] with { Evenings = [.. former.SelectMany(c => c.Evenings).DistinctBy(e => e.End.UtcDateTime)] };
        var workshop = (await store.GetRequestAsync(cancellationToken)).Workshop;
        return CalendarFile.Write(latest, workshop, time.GetUtcNow(), before);
    }

    /// <summary>What the workshop says about the work of a plan, whenever it is done.</summary>
    private async Task<CalendarRequest> AboutAsync(Plan plan, CalendarMarks marks, CancellationToken cancellationToken) => new()
    {
        Plan = plan,
        HomeZone = TimeZoneInfo.Local,
        Start = time.GetUtcNow(),
        Gifts = await store.GetDatedGiftsAsync(cancellationToken),
        Done = marks.Done,
        Pinned = marks.Pinned,
        Prices = await store.GetPricesAsync(cancellationToken),
        Jigs = await store.GetJigsAsync(cancellationToken),
        HourWorth = (await store.GetShopAsync(cancellationToken)).HourWorth,
    };

    private async Task<ImmutableArray<TimeReading>> TimesAsync(CancellationToken cancellationToken) => [.. (await store.ListTimesAsync(cancellationToken)).Select(t => t.Reading)];

    /// <summary>A kept calendar that still holds; null when an older program wrote it otherwise, or when it does not.</summary>
    internal static WorkCalendar? FindSound(StoredCalendar stored)
    {
        try
        {
            var calendar = CalendarJson.Read(stored.Json);
            return ScheduleAudit.Check(calendar.Problem, calendar.Schedule).IsEmpty ? calendar : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static ShopClock ClockOf(WorkCalendar calendar) =>
        ShopClock.Of(calendar.Start, calendar.Problem.HorizonMinutes, ShopZones.Find(calendar.TimeZone, TimeZoneInfo.Local) ?? TimeZoneInfo.Local);

    private static bool IsSame<T>(T one, T other) => JsonSerializer.Serialize(one, PlanJson.Options) == JsonSerializer.Serialize(other, PlanJson.Options);

    private sealed record KnownChance(long Calendar, CalendarChance Chance);
}
