using Scrapwright.Core.Plans;
using Scrapwright.Files;

namespace Scrapwright.Planning.Tests;

public sealed class SimulatedBatchesTests
{
    // At 80 % many panels are far from certain; at 95 % few. The spread of 100,000 batches is below 0.0016.
    [Theory]
    [InlineData(80)]
    [InlineData(95)]
    public async Task Chances_of_the_example_agree_with_a_hundred_thousand_batches_within_a_point(int percent)
    {
        var request = ExampleWorkshop.Request;
        var plan = await Requests.PlanOf(request with { Shop = request.Shop with { ConfidencePercent = percent } }, new PlanLimits { Seconds = 2, Deterministic = true });

        var held = SimulatedBatches.Run(plan, 100_000, 1);

        var chances = new PlanChances(PlanIndex.Of(plan));
        foreach (var glueUp in plan.GlueUps)
        {
            Assert.InRange(chances.Of(glueUp).All - held[glueUp.Id], -0.01, 0.01);
        }

        foreach (var made in plan.Made)
        {
            var chance = chances.OfGift(made.Gift).All;
            Assert.InRange(chance - held[made.Gift], -0.01, 0.01);
            Assert.InRange(chance, (percent / 100.0) - 0.001, 1);
            Assert.Equal((int)Math.Floor(chance * 1000), made.ChancePerMille);
        }

        // Something is at stake: were all chances 1, agreement would mean nothing.
        Assert.Contains(held.Values, h => h < 0.98);
    }
}
