using Scrapwright.Core.Plans.Audit;

namespace Scrapwright.Core.Calendar.Audit;

/// <summary>Settings: each for tasks, around all of them, once in a window, and never two of one station at a time.</summary>
internal sealed class SettingTimes(ScheduleProblem problem, Schedule schedule, Findings findings)
{
    private readonly Dictionary<string, ScheduleSetUp> settings = problem.SetUps.ToDictionary(s => s.Key, StringComparer.Ordinal);
    private readonly HashSet<string> covered = [];

    /// <summary>Looks at all settings, then for tasks without one.</summary>
    internal void Check()
    {
        var order = schedule.SetUps.OrderBy(s => s.Start).ThenBy(s => s.SetUp, StringComparer.Ordinal);
        if (!findings.Same("settings, order", schedule.SetUps, order)) return;
        foreach (var standing in schedule.SetUps)
        {
            if (findings.Require(settings.ContainsKey(standing.SetUp), "settings", standing.SetUp, "a setting of the problem")) CheckTasks(standing);
        }

        foreach (var task in problem.Tasks.Where(t => t.SetUp.Length > 0))
        {
            findings.Require(covered.Contains(task.Id), $"task {task.Id}, setting", $"none of {task.SetUp} stands around it", "one, from its set-up to the task's end");
        }

        CheckStations();
    }

    private void CheckTasks(ScheduledSetUp standing)
    {
        var where = $"setting {standing.SetUp} at {standing.Start}";
        if (!findings.Require(standing.Start >= 0 && standing.End <= problem.HorizonMinutes, where, $"to {standing.End}", $"from 0 to {problem.HorizonMinutes}")) return;
        var begin = standing.Start + settings[standing.SetUp].Minutes;
        var hours = "";
        var end = -1;
        for (var i = 0; i < problem.Tasks.Length; i++)
        {
            var (task, scheduled) = (problem.Tasks[i], schedule.Tasks[i]);
            if (task.SetUp != standing.SetUp || scheduled.Start < begin || scheduled.End > standing.End) continue;
            covered.Add(task.Id);
            end = Math.Max(end, scheduled.End);
            hours = task.Hours;
        }

        if (!findings.Require(end >= 0, where, "no task in it", "at least one")) return;
        findings.Equal($"{where}, end", standing.End, end);
        var windows = problem.Hours.Single(h => h.Key == hours).Windows;
        var window = windows.FirstOrDefault(w => w.Start <= standing.Start && standing.End <= w.End);
        if (!findings.Require(window.End > 0, where, $"from {standing.Start} to {standing.End}", $"within one window of {hours}")) return;
        var times = schedule.SetUps.Count(s => s.SetUp == standing.SetUp && s.Start >= window.Start && s.End <= window.End);
        findings.Require(times == 1, where, $"set up {times} times from {window.Start} to {window.End}", "once in a window");
    }

    private void CheckStations()
    {
        foreach (var station in schedule.SetUps.Where(s => settings.ContainsKey(s.SetUp)).GroupBy(s => settings[s.SetUp].Station))
        {
            var reached = (End: -1, Key: "");
            foreach (var standing in station.OrderBy(s => s.Start))
            {
                findings.Require(standing.Start >= reached.End, $"station {station.Key}", $"{standing.SetUp} from {standing.Start}, {reached.Key} until {reached.End}", "one setting at a time");
                if (standing.End > reached.End) reached = (standing.End, standing.SetUp);
            }
        }
    }
}
