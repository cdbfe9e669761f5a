using System.Text.Json.Nodes;
using CsCheck;
using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Tests.Plans;

public sealed partial class PlanAuditTests
{
    private static readonly string FullText = PlanJson.Write(ExamplePlans.Full);

    // Small steps are the hard ones; the far ends are there for overflow.
    private static readonly Gen<long> Amount = Gen.OneOf(
        Gen.Const(1L), Gen.Const(-1L), Gen.Long[-1000, 1000], Gen.Long[-10_000_000_000, 10_000_000_000], Gen.Long).Where(a => a != 0);

    [Fact]
    public void Any_number_changed_by_any_amount_is_found()
    {
        var count = PlanMutation.Numbers(JsonNode.Parse(FullText)).Count();

        Gen.Select(Gen.Int[0, count - 1], Amount).Sample(
            (which, by) => FindsChange(which, by) > 0,
            iter: 250, threads: 1);
    }

    [Fact]
    [Trait("Speed", "Slow")]
    public void Every_number_changed_by_one_is_found()
    {
        var root = JsonNode.Parse(FullText)!;
        var missed = new List<string>();

        // The request is kept by its fingerprint; the sample above is enough for it.
        foreach (var number in PlanMutation.Numbers(root).Where(n => !n.GetPath().StartsWith("$.request", StringComparison.Ordinal)).ToArray())
        {
            var path = number.GetPath();
            var changed = PlanMutation.Changed(number, Sided(number, 1));
            number.ReplaceWith(changed);
            if (PlanMutation.Findings(root, plan => Check(plan).Length) == 0)
            {
                missed.Add(path);
            }

            changed.ReplaceWith(number);
        }

        Assert.Equal([], missed);
    }

    private static int FindsChange(int which, long by)
    {
        var root = JsonNode.Parse(FullText)!;
        var number = PlanMutation.Numbers(root).ElementAt(which);
        number.ReplaceWith(PlanMutation.Changed(number, Sided(number, by)));
        return PlanMutation.Findings(root, plan => Check(plan).Length);
    }

    /// <summary>A bound moves to its wrong side: down for the two levels that are maximised, up for the two that are minimised.</summary>
    private static long Sided(JsonValue number, long by)
    {
        if (!PlanMutation.IsBound(number))
        {
            return by;
        }

        var size = Math.Abs(by >> 2) + 1;
        return number.GetPath()["$.levels[".Length] is '0' or '1' ? -size : size;
    }
}
