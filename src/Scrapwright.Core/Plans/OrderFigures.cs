using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans.Choices;

namespace Scrapwright.Core.Plans;

/// <summary>What the order of a glue-up's strips comes to, so that two orders can be told apart by numbers.</summary>
public sealed record OrderFigures
{
    /// <summary>Least CIEDE2000 difference between neighbours; null for a single strip.</summary>
    public required double? LeastDeltaE { get; init; }

    /// <summary>Mean CIEDE2000 difference between neighbours; null for a single strip.</summary>
    public required double? MeanDeltaE { get; init; }

    /// <summary>Points of the whole plan for looks and variety.</summary>
    public required long LooksPoints { get; init; }

    /// <summary>Width of the panel as glued, and after trimming.</summary>
    public required (Length Glued, Length Trimmed) Width { get; init; }

    /// <summary>What is left of each strip's width after trimming, lower edge first; a strip that is trimmed away altogether is not there. Empty when the plan does not trim the panel.</summary>
    public required ImmutableArray<Lane> Trimmed { get; init; }

    /// <summary>The gift of the same circle and design that looks most like this one; null when there is none.</summary>
    public required GiftDifference? MostAlike { get; init; }

    /// <summary>The figures of a glue-up.</summary>
    /// <param name="index">A plan.</param>
    /// <param name="glueUp">Id of one of its glue-ups.</param>
    /// <exception cref="ArgumentException">The plan has no such glue-up.</exception>
    public static OrderFigures Of(PlanIndex index, string glueUp)
    {
        ArgumentNullException.ThrowIfNull(index);
        var plan = index.Plan;
        var found = plan.GlueUps.FirstOrDefault(g => g.Id == glueUp) ?? throw new ArgumentException($"The plan has no glue-up {glueUp}.", nameof(glueUp));
        ImmutableArray<string> species = [.. found.Strips.Select(s => index.SpeciesOf(s.Offcut))];
        var isSingle = species.Length < 2;
        return new()
        {
            LeastDeltaE = isSingle ? null : PanelOrder.LeastContrast(species),
            MeanDeltaE = isSingle ? null : PanelOrder.MeanContrast(species),
            LooksPoints = PlanScores.Of(plan.Request, index.Designs, plan.Made, plan.GlueUps, plan.Boards, plan.Faced).Looks,
            Width = (found.RoughWidth, found.TargetWidth),
            Trimmed = TrimmedOf(plan, glueUp),
            MostAlike = GiftDifference.FindMostAlike(index, found.Gift),
        };
    }

    // A resawn panel is trimmed layer by layer, all alike.
    private static ImmutableArray<Lane> TrimmedOf(Plan plan, string glueUp)
    {
        var trim = plan.Steps.Where(s => s.Operation == Shops.Operation.TrimWidth).SelectMany(s => s.Works)
            .FirstOrDefault(w => w.In is [var only] && (only == glueUp || only.StartsWith(glueUp + "/", StringComparison.Ordinal)));
        return trim?.Out is [var panel, ..] ? panel.Lanes : [];
    }
}
