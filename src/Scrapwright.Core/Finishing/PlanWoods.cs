using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Finishing;

/// <summary>Which species the single offcuts of a plan are.</summary>
internal sealed class PlanWoods
{
    private readonly Dictionary<string, string> species = new(StringComparer.Ordinal);

    internal PlanWoods(Plan plan)
    {
        foreach (var offcut in plan.Request.Pile)
        {
            if (offcut.Count == 1) species.TryAdd(offcut.Label, offcut.Species);
            else foreach (var piece in offcut.Pieces()) species.TryAdd(piece.Label, piece.Species);
        }
    }

    /// <summary>Key of the species; empty when the pile has no such offcut.</summary>
    internal string Of(string offcut) => species.GetValueOrDefault(offcut, "");

    /// <summary>Keys of the species of a glue-up, each once, lower edge first.</summary>
    internal string[] Of(GlueUp glueUp) => [.. glueUp.Strips.Select(s => Of(s.Offcut)).Where(s => s.Length > 0).Distinct(StringComparer.Ordinal)];
}
