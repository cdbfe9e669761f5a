using System.Collections.Immutable;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Plans;

/// <summary>How different two gifts of one circle look: recipients who compare must not find the same thing twice.</summary>
/// <param name="Circle">The circle, as the first gift names it.</param>
/// <param name="One">Label of one gift.</param>
/// <param name="Other">Label of the other.</param>
/// <param name="IsOtherDesign">True when they come of different families of designs.</param>
/// <param name="DeltaE">
/// Mean CIEDE2000 difference of their panels, laid on each other at one width and turned the way they look most alike; null when one of them has no panel.
/// 0 when all stripes match; about 1 is just visible side by side.
/// </param>
public sealed record GiftDifference(string Circle, string One, string Other, bool IsOtherDesign, double? DeltaE)
{
    // Estimates: what a glance across a table tells apart is far more than what an eye tells apart side by side.
    private const double ClearDeltaE = 10;
    private const double SlightDeltaE = 3;

    private const int MostShown = 12;

    /// <summary>The difference in words.</summary>
    public string Words => (IsOtherDesign, DeltaE) switch
    {
        (true, _) => "different designs",
        (_, null) => "alike in design",
        (_, >= ClearDeltaE) => "clearly different stripes",
        (_, >= SlightDeltaE) => "somewhat different stripes",
        _ => "nearly the same stripes",
    };

    /// <summary>The pairs worth a look: of one design, the dozen most alike.</summary>
    public static ImmutableArray<GiftDifference> WorthALook(PlanIndex index) => [.. Of(index).Where(d => !d.IsOtherDesign).Take(MostShown)];

    /// <summary>The made gift of the same circle and design that looks most like a gift; null when there is none, or when one of them has no panel.</summary>
    /// <param name="index">The plan.</param>
    /// <param name="gift">Label of the gift.</param>
    public static GiftDifference? FindMostAlike(PlanIndex index, string gift)
    {
        ArgumentNullException.ThrowIfNull(index);
        if (index.Gift(gift) is not { Circle.Length: > 0 } one) return null;
        return index.Plan.Made.Select(m => index.Gift(m.Gift)).OfType<Gifts.Gift>()
            .Where(other => other.Label != gift && string.Equals(other.Circle, one.Circle, StringComparison.OrdinalIgnoreCase) && index.Product(other.Label)?.Family == index.Product(gift)?.Family)
            .Select(other => new GiftDifference(one.Circle, gift, other.Label, false, Between(PanelsOf(index, gift), PanelsOf(index, other.Label))))
            .Where(pair => pair.DeltaE is not null).MinBy(pair => pair.DeltaE);
    }

    /// <summary>Every pair of made gifts in one circle, those that are most alike first.</summary>
    public static ImmutableArray<GiftDifference> Of(PlanIndex index)
    {
        ArgumentNullException.ThrowIfNull(index);
        var made = index.Plan.Made.Select(m => index.Gift(m.Gift)).OfType<Gifts.Gift>().Where(g => g.Circle.Length > 0).ToArray();
        var pairs = ImmutableArray.CreateBuilder<GiftDifference>();
        for (var i = 0; i < made.Length; i++)
        {
            foreach (var other in made.Skip(i + 1).Where(g => string.Equals(g.Circle, made[i].Circle, StringComparison.OrdinalIgnoreCase)))
            {
                pairs.Add(new(
                    made[i].Circle, made[i].Label, other.Label,
                    index.Product(made[i].Label)?.Family != index.Product(other.Label)?.Family,
                    Between(PanelsOf(index, made[i].Label), PanelsOf(index, other.Label))));
            }
        }

        return [.. pairs.OrderBy(p => p.IsOtherDesign).ThenBy(p => p.DeltaE ?? 0)];
    }

    private static Stripe[][] PanelsOf(PlanIndex index, string gift) =>
        [.. index.Plan.GlueUps.Where(g => g.IsFor(gift)).Select(g => Stripes(index, g)).DistinctBy(s => string.Join(';', s))];

    private static Stripe[] Stripes(PlanIndex index, GlueUp glueUp)
    {
        double whole = glueUp.Strips.Sum(s => s.Width.Millimetres);
        return [.. glueUp.Strips.Select(s => new Stripe(index.SpeciesOf(s.Offcut), s.Width.Millimetres / whole))];
    }

    // Each panel beside the one of the other gift that is most like it, both ways round.
    private static double? Between(Stripe[][] one, Stripe[][] other) => one.Length == 0 || other.Length == 0
        ? null
        : (one.Average(panel => other.Min(o => Between(panel, o))) + other.Average(panel => one.Min(o => Between(panel, o)))) / 2;

    private static double Between(Stripe[] one, Stripe[] other) => Math.Min(Overlaid(one, other), Overlaid(one, [.. other.Reverse()]));

    private static double Overlaid(Stripe[] one, Stripe[] other)
    {
        var sum = 0.0;
        for (int i = 0, j = 0; i < one.Length && j < other.Length;)
        {
            var (mine, theirs) = (one.Take(i + 1).Sum(s => s.Share), other.Take(j + 1).Sum(s => s.Share));
            var from = Math.Max(one.Take(i).Sum(s => s.Share), other.Take(j).Sum(s => s.Share));
            sum += Math.Max(0, Math.Min(mine, theirs) - from) * DifferenceOf(one[i].Species, other[j].Species);
            if (mine <= theirs) i++;
            else j++;
        }

        return sum;
    }

    private static double DifferenceOf(string one, string other) => one == other || SpeciesTable.FindKey(one) is not { } a || SpeciesTable.FindKey(other) is not { } b
        ? 0
        : ColourDifference.Ciede2000(a.Colour, b.Colour);

    private readonly record struct Stripe(string Species, double Share);
}
