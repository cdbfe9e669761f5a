using System.Text;
using Scrapwright.Client.Api;
using Scrapwright.Core.Calendar;
using Scrapwright.ICalendar;
using Scrapwright.Planning;
using Scrapwright.Planning.Calendar.Advice;
using Scrapwright.Storage;
using Scrapwright.Web.Hosting;
using Scrapwright.Web.Planning;

namespace Scrapwright.Web.Calendar;

/// <summary>The calendar over HTTP.</summary>
internal static class CalendarApi
{
    // A calendar counts minutes from its start; dates far from ours have no use and no room.
    private static readonly DateTimeOffset FirstStart = new(2000, 1, 1, 0, 0, 0, TimeSpan.Zero);
    private static readonly DateTimeOffset LastStart = new(2200, 1, 1, 0, 0, 0, TimeSpan.Zero);

    internal static void MapCalendar(this IEndpointRouteBuilder app)
    {
        MapAdvice(app);
        app.MapGet(ApiRoutes.Calendar, async (ShopCalendars calendars, CancellationToken cancellationToken) => Answers.Ok(await calendars.ViewAsync(cancellationToken)));

        app.MapPost(ApiRoutes.Calendar, (HttpRequest request, ShopCalendars calendars, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<MakeCalendar>(asked => MakeAsync(asked, calendars, store, cancellationToken)));

        app.MapPut(ApiRoutes.CalendarMarks, (HttpRequest request, ShopCalendars calendars, CancellationToken cancellationToken) =>
            request.WithBodyAsync<CalendarMarks>(async marks =>
            {
                var problems = await calendars.PutMarksAsync(marks, cancellationToken);
                return problems.IsEmpty ? Answers.Ok(await calendars.ViewAsync(cancellationToken)) : Answers.Invalid(problems);
            }));

        app.MapPost(ApiRoutes.CalendarMoves, (HttpRequest request, ShopCalendars calendars, CancellationToken cancellationToken) =>
            request.WithBodyAsync<MoveTasks>(asked => MoveAsync(asked, calendars, cancellationToken)));

        app.MapGet(ApiRoutes.CalendarFile, async (ShopCalendars calendars, CancellationToken cancellationToken) =>
            await calendars.FileAsync(cancellationToken) is { } text
                ? TypedResults.File(Encoding.UTF8.GetBytes(text), "text/calendar; charset=utf-8", CalendarFile.Name)
                : NoCalendar());
    }

    private static void MapAdvice(IEndpointRouteBuilder app)
    {
        var questions = new OpenQuestions();
        app.MapGet(ApiRoutes.CalendarChance, async (ShopCalendars calendars, CancellationToken cancellationToken) =>
            await calendars.ChanceAsync(cancellationToken) is { } chance ? Answers.Ok(chance) : NoCalendar());

        app.MapPost(ApiRoutes.CalendarWhy, (HttpRequest request, ShopCalendars calendars, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<CalendarQuestion>(async asked =>
            {
                if (SecondsFault(asked.Seconds, CalendarQuestion.MostSeconds) is { } fault) return Answers.Invalid([fault]);
                if (await store.FindLatestCalendarAsync(cancellationToken) is not { } stored || ShopCalendars.FindSound(stored) is not { } calendar) return NoCalendar();
                if (StoredPlans.FindSound(await store.FindLatestPlanAsync(cancellationToken)) is not { } plan || plan.Fingerprint != calendar.Fingerprint)
                    return Answers.Refuse(StatusCodes.Status409Conflict, "The plan has changed since. Make the calendar again first.", new FieldProblem("calendar", "a calendar of another plan", "one of the latest plan"));
                var request = await calendars.RequestOfAsync(calendar, plan, stored.Marks, cancellationToken);
                return Answers.Ok(await questions.AnswerAsync(token => CalendarAdviser.WhyAsync(request, calendar, new PlanLimits { Seconds = asked.Seconds }, null, token), cancellationToken));
            }));

        app.MapPost(ApiRoutes.CalendarWhyEnd, () =>
        {
            questions.End();
            return Answers.Nothing();
        });
    }

    private static IResult NoCalendar() => Answers.Refuse(StatusCodes.Status404NotFound, "There is no calendar yet.");

    private static FieldProblem? SecondsFault(double seconds, double most) =>
        seconds > 0 && seconds <= most ? null : new FieldProblem("seconds", $"{seconds}", $"a number above 0 and at most {most}");

    private static async Task<IResult> MakeAsync(MakeCalendar asked, ShopCalendars calendars, WorkshopStore store, CancellationToken cancellationToken)
    {
        if (SecondsFault(asked.Seconds, MakeCalendar.MostSeconds) is { } fault) return Answers.Invalid([fault]);
        if (asked is { Start: not null, FirstDay: not null })
            return Answers.Invalid([new FieldProblem("firstDay", $"{asked.FirstDay:yyyy-MM-dd}", "none when a start is given")]);
        if (asked.FirstDay is { } day && (day.Year < FirstStart.Year || day.Year >= LastStart.Year))
            return Answers.Invalid([new FieldProblem("firstDay", $"{day:yyyy-MM-dd}", $"a day from {FirstStart:yyyy-MM-dd} to {LastStart.AddDays(-1):yyyy-MM-dd}")]);
        if (asked.Start is { } start && (start < FirstStart || start > LastStart))
            return Answers.Invalid([new FieldProblem("start", $"{start:yyyy-MM-dd HH:mm}", $"a moment from {FirstStart:yyyy-MM-dd} to {LastStart:yyyy-MM-dd}")]);
        if (StoredPlans.FindSound(await store.FindLatestPlanAsync(cancellationToken)) is not { } plan)
            return Answers.Refuse(StatusCodes.Status404NotFound, "There is no plan yet.");
        return await calendars.MakeAsync(plan, asked, cancellationToken) is { } view
            ? Answers.Ok(view)
            : Answers.Refuse(StatusCodes.Status409Conflict, "A calendar is being made already. Wait for its end.", new FieldProblem("calendar", "being made", "none being made"));
    }

    private static async Task<IResult> MoveAsync(MoveTasks asked, ShopCalendars calendars, CancellationToken cancellationToken)
    {
        if (await calendars.FindLatestAsync(cancellationToken) is not { } calendar)
            return NoCalendar();
        if (asked.Tasks.IsDefaultOrEmpty) return Answers.Invalid([new FieldProblem("tasks", "none", "at least one task")]);
        var known = calendar.Tasks.Select(t => t.Task.Id).ToHashSet(StringComparer.Ordinal);
        FieldProblem[] wrong =
        [
            .. asked.Tasks.Index().Where(t => !known.Contains(t.Item)).Select(t => new FieldProblem($"tasks[{t.Index}]", t.Item, "a task of the latest calendar")),
            .. asked.Tasks.Index().Where(t => asked.Tasks.IndexOf(t.Item) < t.Index).Select(t => new FieldProblem($"tasks[{t.Index}]", t.Item, "each task once")),
        ];
        if (wrong.Length > 0) return Answers.Invalid([.. wrong]);
        if (asked.Start < calendar.Start || (asked.Start - calendar.Start).TotalMinutes > calendar.Problem.HorizonMinutes)
            return Answers.Invalid([new FieldProblem("start", $"{asked.Start:yyyy-MM-dd HH:mm}", $"a moment within the calendar, which begins {calendar.Start:yyyy-MM-dd HH:mm}")]);
        return await calendars.MoveAsync(calendar, asked, cancellationToken) switch
        {
            CalendarOutcome.Dated => Answers.Ok(await calendars.ViewAsync(cancellationToken)),
            CalendarOutcome.Impossible impossible => Answers.Invalid([.. impossible.Reasons.Take(20).Select(r => new FieldProblem(r.Where, r.Found, r.Expected))]),
            _ => Answers.Refuse(StatusCodes.Status409Conflict, "The tasks found no place.", new FieldProblem("start", $"{asked.Start:yyyy-MM-dd HH:mm}", "another moment")),
        };
    }
}
