using Scrapwright.Core.Plans;
using Scrapwright.Files;

namespace Scrapwright.Cli;

/// <summary>Reads a plan from a file that may be anything.</summary>
internal static class PlanReading
{
    /// <summary>The plan, or why the file is none.</summary>
    internal static FileOutcome<Plan> Read(string path) => JsonReading.Read(path, "a plan.json", "a plan.json as scrapwright plan writes it", PlanJson.Read);
}
