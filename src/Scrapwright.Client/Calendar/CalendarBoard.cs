using System.Collections.Immutable;
using Scrapwright.Client.Api;
using Scrapwright.Client.Shell;
using Scrapwright.Core.Calendar;

namespace Scrapwright.Client.Calendar;

/// <summary>The latest calendar and its marks as last heard from the server. Outlives page changes, so that a long making does too.</summary>
public sealed class CalendarBoard(Server server, Undoing undoing)
{
    private DateTimeOffset heard;

    /// <summary>Told when anything here changes.</summary>
    public event Action? Changed;

    /// <summary>The calendar and how it stands; null until it has been read.</summary>
    public CalendarView? View { get; private set; }

    /// <summary>Why it could not be read or made; null when it could.</summary>
    public ApiProblem? Problem { get; private set; }

    /// <summary>True while the server makes one.</summary>
    public bool IsMaking { get; private set; }

    /// <summary>The moment, by the server's clock and as the clock on the shop's wall shows it.</summary>
    public DateTimeOffset Now
    {
        get
        {
            if (View is not { } view) return DateTimeOffset.UtcNow;
            var now = view.Now + (DateTimeOffset.UtcNow - heard);
            return view.Clock?.Shown(now) ?? now;
        }
    }

    /// <summary>Tasks that are done: those that are marked, and what had to be done before them.</summary>
    public ImmutableHashSet<string> Done { get; private set; } = [];

    /// <summary>Reads it again.</summary>
    public async Task LoadAsync()
    {
        Take(await server.GetAsync<CalendarView>(ApiRoutes.Calendar));
        Changed?.Invoke();
    }

    /// <summary>Has one made.</summary>
    /// <param name="seconds">Longest search. [s]</param>
    /// <param name="firstDay">The first day there is time on; null for from now on.</param>
    public async Task MakeAsync(double seconds, DateOnly? firstDay = null)
    {
        if (IsMaking) return;
        (IsMaking, Problem) = (true, null);
        Changed?.Invoke();
        var answer = await server.PostAsync<CalendarView>(ApiRoutes.Calendar, new MakeCalendar(seconds, FirstDay: firstDay));
        IsMaking = false;
        Take(answer);
        Changed?.Invoke();
    }

    /// <summary>Marks tasks as done or not done; the undo bar takes it back.</summary>
    /// <param name="thing">What they are, as the maker calls it.</param>
    /// <param name="tasks">Ids of the tasks.</param>
    /// <param name="isDone">Which.</param>
    /// <param name="end">When they were over.</param>
    /// <returns>Why not; null when it is kept.</returns>
    public async Task<ApiProblem?> MarkAsync(string thing, ImmutableArray<string> tasks, bool isDone, DateTimeOffset end)
    {
        // Of what is taken back all that follows is open again, else it would still count as done.
        var open = isDone ? tasks : [.. tasks, .. Following(tasks)];
        var before = View?.Marks ?? new();
        var problem = await ChangeAsync(marks => isDone ? marks.WithDone(tasks, end) : marks.WithoutDone(open));
        if (problem is not null) return problem;
        undoing.Remember(new Undo(thing, async () => ApiProblem.Line(await ChangeAsync(_ => before)), isDone ? "marked as done" : "marked as not done"));
        return null;
    }

    /// <summary>Lets pinned tasks go anywhere again.</summary>
    /// <param name="tasks">Ids of the tasks.</param>
    /// <returns>Why not; null when it is kept.</returns>
    public Task<ApiProblem?> LetGoAsync(ImmutableArray<string> tasks) => ChangeAsync(marks => marks.WithoutPinned(tasks));

    /// <summary>Keeps tasks where they were moved to.</summary>
    /// <param name="tasks">Ids of the tasks, in order.</param>
    /// <param name="start">When the first of them starts.</param>
    /// <returns>Why not; null when it is kept.</returns>
    public async Task<ApiProblem?> MoveAsync(ImmutableArray<string> tasks, DateTimeOffset start)
    {
        var answer = await server.PostAsync<CalendarView>(ApiRoutes.CalendarMoves, new MoveTasks(tasks, start));
        if (answer is Answer<CalendarView>.Given) Take(answer);
        Changed?.Invoke();
        return answer.Problem;
    }

    private async Task<ApiProblem?> ChangeAsync(Func<CalendarMarks, CalendarMarks> change)
    {
        // Another screen may have marked something meanwhile: it must not be lost.
        if (await server.GetAsync<CalendarView>(ApiRoutes.Calendar) is not Answer<CalendarView>.Given now) return new Answer<CalendarView>.Unreachable().Problem;
        var answer = await server.PutAsync<CalendarView>(ApiRoutes.CalendarMarks, change(now.Value.Marks));
        if (answer is Answer<CalendarView>.Given) Take(answer);
        Changed?.Invoke();
        return answer.Problem;
    }

    private void Take(Answer<CalendarView> answer)
    {
        Problem = answer.Problem;
        if (answer is not Answer<CalendarView>.Given given) return;
        (View, heard) = (given.Value, DateTimeOffset.UtcNow);
        Done = [.. View.Marks.Done.Select(d => d.Task).Concat(Around(View.Marks.Done.Select(d => d.Task), l => l.After, l => l.Before))];
    }

    private HashSet<string> Following(IEnumerable<string> tasks) => Around(tasks, l => l.Before, l => l.After);

    // All that can be reached from tasks along links.
    private HashSet<string> Around(IEnumerable<string> tasks, Func<ScheduleLink, string> from, Func<ScheduleLink, string> to)
    {
        var links = (View?.Calendar?.Problem.Links ?? []).ToLookup(from, to, StringComparer.Ordinal);
        var found = new HashSet<string>(StringComparer.Ordinal);
        var open = new Queue<string>(tasks);
        while (open.TryDequeue(out var task))
        {
            foreach (var next in links[task].Where(found.Add)) open.Enqueue(next);
        }

        return found;
    }
}
