using CsCheck;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;

namespace Scrapwright.Planning.Tests;

/// <summary>Whatever is wrong with the wood, wherever it lies.</summary>
public sealed class DefectsTests
{
    // In sixteenths of an inch: offcuts 40 wide, 330 long.
    private static readonly Gen<Defect> AnyDefect =
        from kind in Gen.Enum<DefectKind>()
        from along in Stretch(330)
        from across in Stretch(40)
        from isMeasured in Gen.Bool
        from isKept in Gen.Int[0, 3]
        select new Defect(kind, along.From, along.To) { Across = isMeasured ? across : null, IsKept = isKept == 0 };

    [Fact]
    public void Any_plan_round_defects_passes_the_audit()
    {
        var made = 0;
        AnyDefect.Array[0, 3].Array[6].Select(Gen.Int[0, 1].Array[6], Gen.Bool.Array[6]).Sample(
            (defects, woods, warped) =>
            {
                var request = Requests.FourSquares with
                {
                    Pile = [.. defects.Select((list, i) => Requests.Offcut($"D{i + 1}", woods[i] == 0 ? "black-walnut" : "sugar-maple", 330, 40, 16) with
                    {
                        Defects = [.. list],
                        Cup = warped[i] ? Length.FromInches(1, 32) : Length.Zero,
                    })],
                    Gifts = [Requests.Squares("bench"), Requests.Squares("shelf", ("count", "6"))],
                };

                var outcome = Planner.PlanAsync(request, new PlanLimits { Seconds = 2, Deterministic = true }).Result;

                if (outcome is PlanOutcome.Planned planned)
                {
                    made += planned.Plan.Made.Length;
                    Assert.Empty(PlanAudit.Check(planned.Plan));
                }
            },
            iter: 12, threads: 1);

        Assert.NotEqual(0, made);
    }

    private static Gen<WidthStretch> Stretch(int whole) => Gen.Select(Gen.Int[0, whole], Gen.Int[0, whole]).Select(
        (one, other) => new WidthStretch(Length.FromInches(Math.Min(one, other), 16), Length.FromInches(Math.Max(one, other), 16)));
}
