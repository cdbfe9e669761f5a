using Scrapwright.Core.Plans;
using Scrapwright.Files;

namespace Scrapwright.Cli;

/// <summary>Reads the plan that a new one begins from.</summary>
internal static class FormerPlan
{
    /// <summary>The plan, or why it is none to begin from: not a plan, or one that does not hold.</summary>
    internal static FileOutcome<Plan> Read(string path)
    {
        var outcome = PlanReading.Read(path);
        return outcome is FileOutcome<Plan>.Read read && PlanAudit.Check(read.Content) is [var finding, ..]
            ? new FileOutcome<Plan>.Refused([new FileProblem(path, 0, 0, $"{finding.Where}: {finding.Found}", $"a plan that holds ({finding.Expected} there)")], 0)
            : outcome;
    }
}
