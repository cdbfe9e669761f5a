using Scrapwright.Core.Plans;

namespace Scrapwright.Cli.Output;

/// <summary>Says what does not hold in a plan.</summary>
internal static class Findings
{
    private const int MostShown = 50;

    internal static void Write(TextWriter writer, IReadOnlyCollection<AuditFinding> findings)
    {
        if (findings.Count == 0) return;
        writer.WriteLine($"The plan does not hold: {PlanText.Count(findings.Count, "finding")}.");
        foreach (var finding in findings.Take(MostShown)) writer.WriteLine($"  {finding.Where}: found {finding.Found}, expected {finding.Expected}");
        if (findings.Count > MostShown) writer.WriteLine($"  And {findings.Count - MostShown} more.");
    }
}
