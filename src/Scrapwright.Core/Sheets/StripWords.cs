using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Sheets;

/// <summary>Where along its offcut a strip begins, so that the clear stretches come to lie beside each other in the glue-up.</summary>
public static class StripWords
{
    /// <summary>Where a piece that comes off the saw begins; empty unless it is crosscut away from the marked end before it is glued.</summary>
    /// <param name="index">The plan.</param>
    /// <param name="step">The step that cuts it.</param>
    /// <param name="piece">The piece as it comes off the saw.</param>
    /// <param name="size">How a length is written.</param>
    public static string Start(PlanIndex index, Step step, Piece piece, Func<Length, string> size)
    {
        ArgumentNullException.ThrowIfNull(index);
        ArgumentNullException.ThrowIfNull(step);
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(size);
        return step.Operation is Operation.RoughCrosscut or Operation.CrosscutStrips && index.StartOf(piece.Id) is { IsPositive: true } start
            ? $"begins {size(start)} from the marked end" : "";
    }

    /// <summary>How strips cut away from the marked end are measured and laid; empty for a step that cuts none.</summary>
    /// <param name="index">The plan.</param>
    /// <param name="step">One of its steps.</param>
    public static string Of(PlanIndex index, Step step)
    {
        ArgumentNullException.ThrowIfNull(index);
        ArgumentNullException.ThrowIfNull(step);
        if (step.Operation is not (Operation.RoughCrosscut or Operation.CrosscutStrips)) return "";
        var used = index.Plan.GlueUps.SelectMany(g => g.Strips).Select(s => s.Piece).ToHashSet(StringComparer.Ordinal);
        var apart = step.Works.SelectMany(w => w.Out).Where(p => used.Contains(p.Id) && index.StartOf(p.Id).IsPositive).Select(p => p.Id).ToArray();
        return apart.Length == 0 ? "" : $"Measure from the marked end and mark the near end of {string.Join(", ", apart)} anew: in the glue-up the marked ends of all strips lie flush.";
    }
}
