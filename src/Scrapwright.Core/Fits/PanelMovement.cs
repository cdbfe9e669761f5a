using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Fits;

/// <summary>How a panel moves over a year: its width, its strips one by one, and the steps that show at its joints.</summary>
public sealed record PanelMovement
{
    /// <summary>Ridge that a fingertip feels at a joint: 0.05 mm. Estimate.</summary>
    public static Length FeltRidge { get; } = Length.FromMicrometres(50);

    /// <summary>Moisture content when the panel is made. [%]</summary>
    public required double MadePercent { get; init; }

    /// <summary>Moisture content in the driest month where it lives. [%]</summary>
    public required double DriestPercent { get; init; }

    /// <summary>Moisture content in the dampest month where it lives. [%]</summary>
    public required double DampestPercent { get; init; }

    /// <summary>Width of the panel when made.</summary>
    public required Length Width { get; init; }

    /// <summary>Change of the width in the driest month: the sum over the strips.</summary>
    public required Length WidthInDriest { get; init; }

    /// <summary>Change of the width in the dampest month: the sum over the strips.</summary>
    public required Length WidthInDampest { get; init; }

    /// <summary>The strips, lower edge first.</summary>
    public required ImmutableArray<StripMovement> Strips { get; init; }

    /// <summary>The joints, lower edge first; one fewer than strips.</summary>
    public required ImmutableArray<NeighbourMovement> Neighbours { get; init; }

    /// <summary>The worst joint; null for a single strip.</summary>
    public NeighbourMovement? WorstNeighbours => Neighbours.MaxBy(n => n.Ridge);

    /// <summary>The strip that wants to cup most; null when none does to speak of.</summary>
    public StripMovement? WorstCup => Strips.Where(s => s.Cup is { Grade: not CupGrade.None }).MaxBy(s => s.Cup!.Value.Depth);

    /// <summary>A glue-up of a plan: its strips as they are in the blanks, made in the gift's month, through the gift's year.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="glueUp">One of its glue-ups.</param>
    public static PanelMovement Of(Plan plan, GlueUp glueUp)
    {
        ArgumentNullException.ThrowIfNull(glueUp);
        return Of(new PlanWood(new PlanIndex(plan, [])), glueUp);
    }

    /// <summary>All glue-ups of a plan, in its order.</summary>
    /// <param name="plan">The plan.</param>
    public static ImmutableArray<PanelMovement> Of(Plan plan) => Of(new PlanIndex(plan, []));

    /// <summary>The same, for a plan that is indexed already.</summary>
    /// <param name="index">The plan; its designs are not needed.</param>
    public static ImmutableArray<PanelMovement> Of(PlanIndex index)
    {
        ArgumentNullException.ThrowIfNull(index);
        var wood = new PlanWood(index);
        return [.. index.Plan.GlueUps.Select(g => Of(wood, g))];
    }

    /// <summary>Any panel, without a plan.</summary>
    /// <param name="strips">The strips, lower edge first, each lying across its grain with its width.</param>
    /// <param name="thickness">Thickness of the panel.</param>
    /// <param name="madePercent">Moisture content when it is made. [%]</param>
    /// <param name="livesIn">The air where it lives.</param>
    /// <exception cref="ArgumentException">No strips, or a species that is not in the table.</exception>
    public static PanelMovement Of(ImmutableArray<MovingWood> strips, Length thickness, double madePercent, Climate livesIn)
    {
        ArgumentNullException.ThrowIfNull(livesIn);
        if (strips.IsDefaultOrEmpty) throw new ArgumentException("A panel has strips.", nameof(strips));
        foreach (var strip in strips) WoodStrain.RequireSpecies(strip.Species, nameof(strips));
        return new PanelYear(strips, thickness, madePercent, new(livesIn)).Work(_ => ("", ""));
    }

    internal static PanelMovement Of(PlanWood wood, GlueUp glueUp)
    {
        var panel = wood.Panel(glueUp);
        var lanes = panel is { } cut && cut.Lanes.Length == glueUp.Strips.Length ? cut.Lanes : [.. glueUp.Strips.Select(s => new Lane(s.Offcut, s.Width))];
        var strips = lanes.Select(l => new MovingWood(wood.Offcut(l.Offcut)?.Species ?? "", wood.Offcut(l.Offcut)?.Rings ?? RingOrientation.Unknown, GrainDirection.Width, l.Width));
        var thickness = wood.Copies(glueUp.Gift, glueUp.Part) is [var first, ..] ? first.Thickness : glueUp.ThicknessLadder.End;
        return new PanelYear([.. strips], thickness, wood.FittedPercent(glueUp.Gift), wood.Home(glueUp.Gift)).Work(i => (glueUp.Strips[i].Piece, glueUp.Strips[i].Offcut));
    }
}
