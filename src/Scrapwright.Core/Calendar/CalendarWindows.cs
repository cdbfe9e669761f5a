using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>The windows of a problem, whatever they are for.</summary>
public static class CalendarWindows
{
    /// <summary>All of them in order, those that overlap or touch as one.</summary>
    /// <param name="problem">The problem.</param>
    public static ImmutableArray<ScheduleWindow> Of(ScheduleProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var merged = new List<ScheduleWindow>();
        foreach (var window in problem.Hours.SelectMany(h => h.Windows).OrderBy(w => w.Start))
        {
            if (merged.Count > 0 && merged[^1].End >= window.Start) merged[^1] = new(merged[^1].Start, Math.Max(merged[^1].End, window.End));
            else merged.Add(window);
        }

        return [.. merged];
    }
}
