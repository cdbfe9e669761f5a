using Scrapwright.Core.Finishing;

namespace Scrapwright.Core.Tests.Finishing;

public sealed class FinishStepsTests
{
    public static TheoryData<string> Keys => [.. FinishTable.All.Select(f => f.Key)];

    [Theory]
    [MemberData(nameof(Keys))]
    public void Every_coat_has_its_steps_in_order(string key)
    {
        var finish = FinishTable.Find(key)!;

        var steps = FinishSteps.For(finish);

        var coats = steps.Select(s => s.Coat).Where(c => c > 0).Distinct().ToArray();
        Assert.Equal(Enumerable.Range(1, finish.Coats), coats);
        Assert.All(steps, s => Assert.True(s is { HandsOnMinutes: > 0, WaitMinutes: >= 0, Text.Length: > 0 }));
        Assert.Equal(finish.HandleHours.Most * 60, steps.Last(s => s.Coat == finish.Coats).WaitMinutes);
    }

    [Fact]
    public void A_wiped_oil_floods_soaks_floods_again_and_is_wiped_dry()
    {
        var first = FinishSteps.For(FinishTable.Find("drying-oil")!).Where(s => s.Coat == 1).ToArray();

        Assert.Equal(["Flood it and keep it wet.", "Wet dry spots again.", "Wipe it all off, with the grain."], first.Select(s => s.Text));
        Assert.Equal([15, 10, 2880], first.Select(s => s.WaitMinutes));
    }

    [Fact]
    public void Sums_are_those_of_the_steps()
    {
        var oil = FinishTable.Find("drying-oil")!;

        // Three coats of 5 + 2 + 5 min and 3 min of buffing; 3 × 25 min of soaking, two days twice, three days at the end.
        Assert.Equal(39, FinishSteps.HandsOnMinutes(oil));
        Assert.Equal((3 * 25) + (2 * 2880) + (72 * 60), FinishSteps.WaitMinutes(oil));
    }
}
