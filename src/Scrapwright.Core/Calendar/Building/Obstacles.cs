using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar.Building;

/// <summary>Why no schedule can be within the horizon, as far as it shows without a search.</summary>
internal static class Obstacles
{
    /// <summary>All that is found; empty when nothing is.</summary>
    internal static ImmutableArray<ScheduleReason> Find(ScheduleFacts facts, StartRanges ranges)
    {
        ImmutableArray<ScheduleReason> tooLong = [.. Enumerable.Range(0, facts.Count).SelectMany(t => TooLong(facts, t))];
        ImmutableArray<ScheduleReason> tooMuch = [.. Enumerable.Range(0, facts.Capacity.Length).SelectMany(r => TooMuch(facts, r))];
        ImmutableArray<ScheduleReason> all = [.. tooLong, .. tooMuch];
        return all.IsEmpty && ranges.Stuck != ScheduleFacts.None ? [Late(facts, ranges)] : all;
    }

    private static IEnumerable<ScheduleReason> TooLong(ScheduleFacts facts, int task)
    {
        if (facts.Hours[task] == ScheduleFacts.None) yield break;
        var longest = facts.Windows[facts.Hours[task]].Select(w => w.Minutes).DefaultIfEmpty(0).Max();
        var needed = facts.Minutes[task] + facts.SetUpMinutes(task);
        if (needed > longest)
        {
            var what = facts.SetUpMinutes(task) > 0 ? $"{needed} min with setting up" : $"{needed} min";
            yield return new ScheduleReason(facts.Problem.Tasks[task].Id, what, $"at most {longest} min, the longest stretch of '{facts.Problem.Tasks[task].Hours}'");
        }
    }

    private static IEnumerable<ScheduleReason> TooMuch(ScheduleFacts facts, int resource)
    {
        var tasks = Enumerable.Range(0, facts.Count).Where(t => facts.Needs[t].Any(n => n.Resource == resource)).ToArray();
        if (tasks.Length == 0 || tasks.Any(t => facts.Hours[t] == ScheduleFacts.None)) yield break;
        var work = tasks.Sum(t => (long)facts.Minutes[t] * facts.Needs[t].Where(n => n.Resource == resource).Sum(n => n.Amount));
        work += tasks.Where(t => facts.SetUp[t] != ScheduleFacts.None && facts.SetUps[facts.SetUp[t]].Maker == resource)
            .Select(t => facts.SetUp[t]).Distinct().Sum(key => (long)facts.SetUps[key].Minutes);
        var hours = (long)OpenMinutes(facts, tasks) * facts.Capacity[resource];
        if (work > hours)
        {
            yield return new ScheduleReason(facts.Problem.Resources[resource].Id, $"{hours} min of hours until the horizon", $"{work} min for all tasks and settings");
        }
    }

    private static int OpenMinutes(ScheduleFacts facts, int[] tasks)
    {
        var (minutes, reached) = (0, 0);
        foreach (var window in tasks.Select(t => facts.Hours[t]).Distinct().SelectMany(h => facts.Windows[h]).OrderBy(w => w.Start))
        {
            var begin = Math.Max(window.Start, reached);
            var end = Math.Min(window.End, facts.Problem.HorizonMinutes);
            if (end <= begin) continue;
            minutes += end - begin;
            reached = end;
        }

        return minutes;
    }

    private static ScheduleReason Late(ScheduleFacts facts, StartRanges ranges)
    {
        var task = ranges.Stuck;
        var earliest = ranges.Earliest[task] >= ScheduleFacts.Never ? "no start in its hours" : $"a start at {ranges.Earliest[task]} at the earliest";
        return new ScheduleReason(facts.Problem.Tasks[task].Id, earliest, $"a start at {Math.Max(0, ranges.Latest[task])} at the latest, for what follows, what is fixed and the horizon");
    }
}
