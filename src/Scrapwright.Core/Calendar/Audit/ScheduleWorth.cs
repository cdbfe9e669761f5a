using Scrapwright.Core.Plans.Audit;

namespace Scrapwright.Core.Calendar.Audit;

/// <summary>The levels: all there, in order, with right values and bounds on the right side.</summary>
internal sealed class ScheduleWorth(ScheduleProblem problem, Schedule schedule, Findings findings)
{
    private readonly Dictionary<string, ScheduledTask> byId = schedule.Tasks.ToDictionary(t => t.Task, StringComparer.Ordinal);

    /// <summary>Looks at all levels.</summary>
    internal void Check()
    {
        var expected = new List<(ScheduleLevelKind Kind, int? Priority, long Value)>();
        foreach (var dated in problem.Deliveries.Where(d => d.Due.HasValue).GroupBy(d => d.Priority).OrderBy(g => g.Key))
        {
            expected.Add((ScheduleLevelKind.Lateness, dated.Key, dated.Sum(HoursLate)));
        }

        expected.Add((ScheduleLevelKind.AllReady, null, AllReady()));
        foreach (var wanted in problem.Deliveries.Where(d => d.Wanted.HasValue).GroupBy(d => d.Priority).OrderBy(g => g.Key))
        {
            expected.Add((ScheduleLevelKind.Slack, wanted.Key, wanted.Sum(DaysShort)));
        }

        (ScheduleLevelKind, int?, long)[] settingUp = problem.SetUps.Any() ? [(ScheduleLevelKind.SetUps, null, SettingUp())] : [];
        (ScheduleLevelKind, int?, long)[] moved = problem.Before.Any() ? [(ScheduleLevelKind.Moved, null, Moved())] : [];
        if (problem.SetUpMinutesBefore is { } known) expected.AddRange([(ScheduleLevelKind.MoreSetUps, null, Math.Max(0, SettingUp() - known)), .. moved, .. settingUp]);
        else expected.AddRange([.. settingUp, .. moved]);
        if (!findings.Same("levels", schedule.Levels.Select(l => (l.Kind, l.Priority)), expected.Select(e => (e.Kind, e.Priority)))) return;
        foreach (var (level, wanted) in schedule.Levels.Zip(expected))
        {
            var where = $"level {level.Kind}{(level.Priority is { } priority ? $" of priority {priority}" : "")}";
            findings.Equal($"{where}, value", level.Value, wanted.Value);
            findings.Require(level.Bound >= 0 && level.Bound <= level.Value, $"{where}, bound", level.Bound, $"0 to {level.Value}");
        }
    }

    private long Ready(ScheduleDelivery delivery) => delivery.Last.Select(l => (long)byId[l.Task].End + l.WaitMinutes).DefaultIfEmpty(0).Max();

    private long HoursLate(ScheduleDelivery delivery) => (long)Math.Ceiling(Math.Max(0, Ready(delivery) - delivery.Due!.Value) / 60m);

    // A day that has begun counts whole. Definition: 1440 minutes.
    private long DaysShort(ScheduleDelivery delivery) => (long)Math.Ceiling(Math.Max(0, Ready(delivery) - delivery.Wanted!.Value) / 1440m);

    private long AllReady() =>
        UpToStep(schedule.Tasks.Select(t => (long)t.End).Concat(problem.Deliveries.Select(Ready)).DefaultIfEmpty(0).Max());

    private long UpToStep(long ready) =>
        problem.ReadyOffsetMinutes + ((long)Math.Ceiling(Math.Max(0, ready - problem.ReadyOffsetMinutes) / (decimal)problem.ReadyStepMinutes) * problem.ReadyStepMinutes);

    private long SettingUp()
    {
        var minutes = problem.SetUps.ToDictionary(s => s.Key, s => (long)s.Minutes, StringComparer.Ordinal);
        return schedule.SetUps.Sum(s => minutes.GetValueOrDefault(s.SetUp));
    }

    private long Moved() => problem.Before.Count(b => byId.TryGetValue(b.Task, out var now) && !IsWhereItWas(b, now));

    private bool IsWhereItWas(ScheduledTask before, ScheduledTask now)
    {
        var key = problem.Tasks.Single(t => t.Id == before.Task).Hours;
        if (key.Length == 0) return before.Start == now.Start;
        var window = problem.Hours.Single(h => h.Key == key).Windows.FirstOrDefault(w => w.Start <= before.Start && before.Start <= w.End);
        return window != default && window.Start <= now.Start && now.Start <= window.End;
    }
}
