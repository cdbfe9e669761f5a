using Scrapwright.Core.Designs;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar;

/// <summary>
/// How long a work takes. The shop's minutes for each piece are the main number; half of them are handling, the other half grows with what there is to do: cuts, passes, edges,
/// clamps and strips, holes, area. They are meant for the usual amount given here, so a usual work takes just the shop's minutes.
/// </summary>
internal sealed class TaskMinutes
{
    // Fetching, marking, stacking: estimate.
    private const double HandlingShare = 0.5;

    // What the minutes of a small shop are meant for, estimates all: cuts of a crosscut or rip with its end or edge; passes over a face; strips and clamps of a glue-up;
    // holes of a plate; laps and mitres of a part; edge of a square of 4 in [mm]; faces of such a square sanded with three grits [cm²]; parts of a stand.
    private const double UsualCuts = 2, UsualPasses = 2, UsualStripsAndClamps = 9, UsualHoles = 4, UsualLaps = 2, UsualMitres = 2;
    private const double UsualEdgeMm = 400, UsualSandedCm2 = 600, UsualParts = 8;

    // What floating sums leave is no minute: our own choice.
    private const double Sliver = 1e-6;

    // A pass takes off 1/32 in: common practice, no source.
    private static readonly Length Pass = Length.FromInches(1, 32);

    private readonly PlanIndex index;
    private readonly Dictionary<string, Part> parts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> grits = new(StringComparer.Ordinal);

    internal TaskMinutes(PlanIndex index)
    {
        this.index = index;
        foreach (var made in index.Plan.Made)
        {
            foreach (var part in made.Parts)
                if (index.Product(made.Gift)?.Parts.FirstOrDefault(p => p.Key == part.Part) is { } known) parts.TryAdd(part.Piece, known);
            if (index.Gift(made.Gift) is { } gift)
                grits[made.Gift] = Math.Max(1, SandingAdvice.Grits(SandingAdvice.GritsFor(Shop, FinishTable.Find(FinishAdvice.KeyFor(gift, Shop))).Sequence).Length);
        }
    }

    private Shop Shop => index.Plan.Request.Shop;

    /// <summary>Minutes of setting a station up and clearing away, from the shop's times. [min]</summary>
    internal int SetUp(Operation operation) => WorkContent.HandsOnMinutes(operation, 0, Shop);

    /// <summary>Usual minutes of one work, not rounded: without any reading. [min]</summary>
    internal double Of(Step step, Work work) => Each(step.Operation) * (HandlingShare + ((1 - HandlingShare) * Amount(step, work)));

    /// <summary>Minutes by a pace, not rounded. [min]</summary>
    internal static double By(OperationPace pace, double usualMinutes) => usualMinutes * pace.PerMille / 1000;

    /// <summary>Whole minutes when all goes well. [min], at least 1</summary>
    internal static int Least(OperationPace pace, double minutes) => Math.Max(1, (int)Math.Floor((minutes * pace.LeastPerMille / 1000) + Sliver));

    /// <summary>Whole minutes, rounded up. [min], at least 1</summary>
    internal static int Likely(double minutes) => Math.Max(1, (int)Math.Ceiling(minutes - Sliver));

    /// <summary>Whole minutes when it does not go well. [min]</summary>
    internal static int Most(OperationPace pace, double minutes) => Math.Max(1, (int)Math.Ceiling((minutes * pace.MostPerMille / 1000) - Sliver));

    private int Each(Operation operation) => WorkContent.HandsOnMinutes(operation, 1, Shop) - SetUp(operation);

    // How much there is to do, as a multiple of the usual.
    private double Amount(Step step, Work work) => step.Operation switch
    {
        Operation.RoughCrosscut or Operation.RoughRip or Operation.Rip or Operation.ResawStrips or Operation.Resaw or Operation.CrosscutStrips
            or Operation.CrosscutBlanks or Operation.CutRods => Math.Max(1, work.Cuts + (work.Taken.IsPositive ? 1 : 0)) / UsualCuts,
        Operation.FaceJoint or Operation.FacePlane or Operation.CleanSawnFaces or Operation.PlaneToThickness => Passes(work, 1) / UsualPasses,
        // Both faces.
        Operation.FlattenPanel or Operation.PlanePanel => Passes(work, 2) / UsualPasses,
        // Two of them are usual.
        Operation.EdgeJoint => Edges(work) / 2,
        Operation.GlueUp => (work.In.Length + (index.Plan.GlueUps.FirstOrDefault(g => g.Id == step.GlueUp)?.ClampsNeeded ?? 0)) / UsualStripsAndClamps,
        Operation.Drill => PartOf(work) is { Holes.IsEmpty: false } part ? part.Holes.Length / UsualHoles : 1,
        Operation.CutLaps => PartOf(work) is { Notches.IsEmpty: false } part ? part.Notches.Length / UsualLaps : 1,
        Operation.CutMitres => PartOf(work)?.Mitres is MitredEnds.Left or MitredEnds.Right ? 1 / UsualMitres : 1,
        Operation.TreatEdges => 2 * work.Out.Sum(o => o.Length.Millimetres + o.Width.Millimetres) / UsualEdgeMm,
        Operation.Sand => grits.GetValueOrDefault(step.Gift, 1) * FacesCm2(work) / UsualSandedCm2,
        Operation.DryFit or Operation.Assemble => work.In.Length / UsualParts,
        // As for a surface sanded with three grits, whatever the finish: estimate.
        Operation.Finish => 3 * FacesCm2(work) / UsualSandedCm2,
        _ => 1,
    };

    private static double Passes(Work work, int least) => Math.Max(least, Math.Ceiling(work.Taken.Millimetres / Pass.Millimetres));

    private double Edges(Work work)
    {
        var each = Shop.Allowances.EdgeJoint.Mean;
        return !each.IsPositive || work.Taken > each ? 2 : 1;
    }

    private Part? PartOf(Work work) => work.Out is [var piece, ..] ? parts.GetValueOrDefault(piece.Id) : null;

    private static double FacesCm2(Work work) => 2 * work.Out.Sum(o => Area.Of(o.Length, o.Width).SquareMillimetres) / 100;
}
