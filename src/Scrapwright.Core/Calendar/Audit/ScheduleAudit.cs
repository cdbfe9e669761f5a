using System.Collections.Immutable;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Audit;

namespace Scrapwright.Core.Calendar.Audit;

/// <summary>The independent check of a schedule: works out from problem and schedule alone whether every rule holds. Shares no code with what makes schedules, and throws on none of them.</summary>
public static class ScheduleAudit
{
    /// <summary>Everything that does not hold; empty when the schedule does.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="schedule">A schedule of it, whoever made it.</param>
    public static ImmutableArray<AuditFinding> Check(ScheduleProblem problem, Schedule schedule)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(schedule);
        var findings = new Findings();
        foreach (var fault in ScheduleProblemFaults.Find(problem)) findings.Add($"problem, {fault.Where}", fault.Found, fault.Expected);
        if (!findings.AreNone) return findings.ToArray();
        new TaskTimes(problem, schedule, findings).Check();
        if (!findings.AreNone) return findings.ToArray();
        new GapTimes(problem, schedule, findings).Check();
        new SettingTimes(problem, schedule, findings).Check();
        if (findings.AreNone) new AmountsTaken(problem, schedule, findings).Check();
        new ScheduleWorth(problem, schedule, findings).Check();
        return findings.ToArray();
    }
}
