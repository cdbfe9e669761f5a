using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>Where tasks that are moved by hand may start: a few places in each window, of which one mostly serves.</summary>
internal sealed class MovePlaces
{
    private readonly Schedule schedule;
    private readonly ImmutableArray<ScheduledTask> others;
    private readonly string setting;
    private readonly int setUpMinutes;
    private readonly int minutes;
    private readonly int earliest;

    internal MovePlaces(WorkCalendar calendar, ImmutableArray<string> tasks, int now)
    {
        var problem = calendar.Problem;
        schedule = calendar.Schedule;
        var moved = tasks.Select(id => problem.Tasks.First(t => t.Id == id)).ToArray();
        var ends = schedule.Tasks.ToDictionary(t => t.Task, t => t.End, StringComparer.Ordinal);
        others = [.. schedule.Tasks.Where(t => !tasks.Contains(t.Task) && !t.Task.StartsWith("done/", StringComparison.Ordinal))];
        setting = moved[0].SetUp;
        setUpMinutes = problem.SetUps.FirstOrDefault(s => s.Key == setting)?.Minutes ?? 0;
        minutes = moved.Sum(t => t.Minutes);
        earliest = problem.Links.Where(l => tasks.Contains(l.After) && !tasks.Contains(l.Before)).Select(l => ends[l.Before] + l.LeastMinutes)
            .Concat(moved.Select(t => t.EarliestStart)).Append(now).Max();
        Start = schedule.Tasks.Where(t => tasks.Contains(t.Task)).Min(t => t.Start);
        Windows = [.. problem.Hours.First(h => h.Key == moved[0].Hours).Windows.Where(w => w.End > now)];
    }

    /// <summary>Where the first of them starts now. [min]</summary>
    internal int Start { get; }

    /// <summary>The windows they may lie in, without those that are over.</summary>
    internal ImmutableArray<ScheduleWindow> Windows { get; }

    /// <summary>Setting up and all of them. [min]</summary>
    internal int WholeMinutes => setUpMinutes + minutes;

    /// <summary>Starts worth a try: where the setting stands already, in the first gap, at the beginning. [min]</summary>
    internal IEnumerable<int> StartsIn(ScheduleWindow window) =>
        Wanted(window).Where(start => start >= earliest && start + minutes <= window.End).Distinct();

    private IEnumerable<int> Wanted(ScheduleWindow window)
    {
        foreach (var standing in schedule.SetUps.Where(s => s.SetUp == setting && window.Holds(s.Start, s.End))) yield return Math.Max(standing.End, earliest);
        var busy = others.Select(t => (t.Start, t.End)).Concat(schedule.SetUps.Where(s => others.Any(o => o.Start >= s.Start && o.End <= s.End)).Select(s => (s.Start, s.End)))
            .Where(b => b.Start < window.End && b.End > window.Start).OrderBy(b => b.Start).ToArray();
        var free = Math.Max(window.Start, earliest - setUpMinutes);
        foreach (var (start, end) in busy)
        {
            if (start - free >= WholeMinutes) break;
            free = Math.Max(free, end);
        }

        yield return free + setUpMinutes;
        yield return Math.Max(window.Start + setUpMinutes, earliest);
    }
}
