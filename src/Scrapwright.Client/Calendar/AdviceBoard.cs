using System.Collections.Immutable;
using Scrapwright.Client.Api;
using Scrapwright.Client.Shell;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Shops;

namespace Scrapwright.Client.Calendar;

/// <summary>How likely the latest calendar holds, what holds it up, and what could be done. Outlives page changes: an answer takes a while.</summary>
public sealed class AdviceBoard(Server server, CalendarBoard calendars, Undoing undoing)
{
    private ImmutableArray<ScheduledTask> known = [];
    private ImmutableArray<ScheduledTask> asked = [];

    /// <summary>Told when something here changes.</summary>
    public event Action? Changed;

    /// <summary>The chances of the calendar that is shown; null until they are known.</summary>
    public CalendarChance? Chance { get; private set; }

    /// <summary>The latest answer; null when there is none, or when the calendar is another one by now.</summary>
    public CalendarWhy? Why { get; private set; }

    /// <summary>True while the server works on an answer.</summary>
    public bool IsAsking { get; private set; }

    /// <summary>True once the question is being ended.</summary>
    public bool IsEnding { get; private set; }

    /// <summary>Why there is no answer; null when there is, or when nothing was asked.</summary>
    public ApiProblem? Problem { get; private set; }

    private ImmutableArray<ScheduledTask> Shown => calendars.View?.Calendar?.Schedule.Tasks ?? [];

    /// <summary>Reads the chances of the calendar that is shown, unless they are known.</summary>
    public async Task LoadAsync()
    {
        var shown = Shown;
        if (shown.SequenceEqual(known)) return;
        (known, Chance) = (shown, null);
        if (!shown.SequenceEqual(asked)) (Why, Problem) = (null, null);
        Changed?.Invoke();
        if (shown.IsEmpty) return;
        var answer = await server.GetAsync<CalendarChance>(ApiRoutes.CalendarChance);
        if (!shown.SequenceEqual(known)) return;
        if (answer is Answer<CalendarChance>.Given given) Chance = given.Value;
        // Without an answer it is asked for again the next time.
        else known = [];
        Changed?.Invoke();
    }

    /// <summary>Asks what holds the calendar up and what could be done.</summary>
    /// <param name="seconds">Longest search. [s]</param>
    public async Task AskAsync(double seconds)
    {
        if (IsAsking) return;
        (IsAsking, IsEnding, Problem, asked) = (true, false, null, Shown);
        Changed?.Invoke();
        var answer = await server.PostAsync<CalendarWhy>(ApiRoutes.CalendarWhy, new CalendarQuestion(seconds));
        IsAsking = false;
        if (asked.SequenceEqual(Shown)) (Problem, Why) = (answer.Problem, answer is Answer<CalendarWhy>.Given given ? given.Value : null);
        Changed?.Invoke();
    }

    /// <summary>Ends the question: it is answered with what is known.</summary>
    public async Task EndAsync()
    {
        IsEnding = true;
        Changed?.Invoke();
        await server.EndAsync(ApiRoutes.CalendarWhyEnd, () => IsAsking);
    }

    /// <summary>Takes other hours and makes the calendar again; the undo bar gives the hours back.</summary>
    /// <param name="thing">What they are, as the maker calls it.</param>
    /// <param name="hours">The hours.</param>
    /// <param name="seconds">Longest search. [s]</param>
    public async Task TakeAsync(string thing, WorkHours hours, double seconds)
    {
        if (await server.GetAsync<WorkHours>(ApiRoutes.Hours) is not Answer<WorkHours>.Given before)
        {
            Problem = new Answer<WorkHours>.Unreachable().Problem;
            Changed?.Invoke();
            return;
        }

        var answer = await server.PutAsync<WorkHours>(ApiRoutes.Hours, hours);
        Problem = answer.Problem;
        Changed?.Invoke();
        if (answer is not Answer<WorkHours>.Given) return;
        undoing.Remember(new Undo(thing, () => GiveBackAsync(before.Value), "taken into your hours"));
        await calendars.MakeAsync(seconds);
    }

    private async Task<string> GiveBackAsync(WorkHours hours)
    {
        var answer = await server.PutAsync<WorkHours>(ApiRoutes.Hours, hours);
        await calendars.LoadAsync();
        return ApiProblem.Line(answer.Problem);
    }
}
