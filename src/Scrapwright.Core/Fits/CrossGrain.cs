using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Fits;

/// <summary>Joints glued across the grain, with how far their two sides move apart over the year.</summary>
public static class CrossGrain
{
    /// <summary>What a glued line takes without harm: 1/32 in. About three inches of wood through a usual home's year. Common practice, no source.</summary>
    public static Length Threshold { get; } = Length.FromInches(1, 32);

    /// <summary>Every cross-grain line of the made gifts, in the plan's order; joints whose parts move alike are not in it.</summary>
    public static ImmutableArray<CrossGrainJoint> Of(Plan plan) => Of(PlanIndex.Of(plan));

    /// <summary>The same, for a plan that is indexed already.</summary>
    /// <param name="index">The plan with its designs.</param>
    public static ImmutableArray<CrossGrainJoint> Of(PlanIndex index)
    {
        ArgumentNullException.ThrowIfNull(index);
        return Of(new PlanWood(index));
    }

    internal static ImmutableArray<CrossGrainJoint> Of(PlanWood wood) =>
    [
        .. from made in wood.Plan.Made
           let product = wood.Product(made.Gift)
           where product is not null
           from joint in product.Joints
           from line in joint.Glued
           where line.Crosses
           select At(wood, made.Gift, joint, line),
    ];

    private static CrossGrainJoint At(PlanWood wood, string gift, Joint joint, GluedLine line)
    {
        var (part, direction) = line.Direction == GrainDirection.Along ? (line.Other, line.OtherDirection) : (line.Part, line.Direction);
        var (from, home) = (wood.FittedPercent(gift), wood.Home(gift));
        // Definition: twelve months.
        var (month, strain) = Enumerable.Range(1, 12).Select(m => (m, Strain(wood, gift, part, direction, from, home.At(m)))).MaxBy(m => m.Item2);
        var mismatch = MovedLength.Change(line.Size.Millimetres * strain);
        return new(gift, joint, line, mismatch, month, mismatch > Threshold);
    }

    // The copy that moves most; strips that nobody has looked at count as flat sawn.
    private static double Strain(PlanWood wood, string gift, string part, GrainDirection direction, double fromPercent, double toPercent) =>
        wood.Copies(gift, part).Select(p => wood.Body(p, direction).Farthest(fromPercent, toPercent)).DefaultIfEmpty(0).Max();
}
