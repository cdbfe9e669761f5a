using Scrapwright.Core.Plans.Audit;

namespace Scrapwright.Core.Calendar.Audit;

/// <summary>What is taken of each resource at every minute: by tasks, by what they hold afterwards, and by hands that set up.</summary>
internal sealed class AmountsTaken(ScheduleProblem problem, Schedule schedule, Findings findings)
{
    /// <summary>Looks at all resources.</summary>
    internal void Check()
    {
        foreach (var resource in problem.Resources)
        {
            var changes = new SortedDictionary<long, long>();
            for (var i = 0; i < problem.Tasks.Length; i++)
            {
                foreach (var need in problem.Tasks[i].Needs.Where(n => n.Resource == resource.Id))
                {
                    Take(changes, schedule.Tasks[i].Start, (long)schedule.Tasks[i].End + need.HeldMinutes, need.Amount);
                }
            }

            foreach (var standing in schedule.SetUps)
            {
                var setting = problem.SetUps.Single(s => s.Key == standing.SetUp);
                if (setting.Maker == resource.Id) Take(changes, standing.Start, standing.Start + setting.Minutes, 1);
            }

            CheckLevel(resource, changes);
        }
    }

    private static void Take(SortedDictionary<long, long> changes, long from, long to, long amount)
    {
        changes[from] = changes.GetValueOrDefault(from) + amount;
        changes[to] = changes.GetValueOrDefault(to) - amount;
    }

    private void CheckLevel(ScheduleResource resource, SortedDictionary<long, long> changes)
    {
        long taken = 0;
        foreach (var (minute, change) in changes)
        {
            taken += change;
            if (!findings.Require(taken <= resource.Capacity, $"resource {resource.Id} at {minute}", $"{taken} taken", $"at most {resource.Capacity}")) return;
        }
    }
}
