using Scrapwright.Core.Plans.Audit;

namespace Scrapwright.Core.Calendar.Audit;

/// <summary>Gaps between tasks, and what waits at the end.</summary>
internal sealed class GapTimes(ScheduleProblem problem, Schedule schedule, Findings findings)
{
    private readonly Dictionary<string, ScheduledTask> byId = schedule.Tasks.ToDictionary(t => t.Task, StringComparer.Ordinal);

    /// <summary>Looks at all links and deliveries.</summary>
    internal void Check()
    {
        foreach (var link in problem.Links)
        {
            var gap = byId[link.After].Start - byId[link.Before].End;
            var where = $"link {link.Before} to {link.After}";
            findings.Require(gap >= link.LeastMinutes, where, $"{gap} min between", $"{link.LeastMinutes} min or more");
            findings.Require(link.MostMinutes is not { } most || gap <= most, where, $"{gap} min between", $"{link.MostMinutes} min or less");
        }

        foreach (var (delivery, last) in problem.Deliveries.SelectMany(d => d.Last.Select(l => (d, l))))
        {
            var ready = (long)byId[last.Task].End + last.WaitMinutes;
            findings.Require(ready <= problem.HorizonMinutes, $"delivery {delivery.Id}", $"ready at {ready}", $"by {problem.HorizonMinutes}");
        }
    }
}
