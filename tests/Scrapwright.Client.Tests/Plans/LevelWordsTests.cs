using Scrapwright.Client.Plans;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;

namespace Scrapwright.Client.Tests.Plans;

public sealed class LevelWordsTests
{
    [Fact]
    public void A_level_that_meets_its_bound_is_proven()
    {
        Assert.Equal("proven best", LevelWords.Verdict(new Level { Kind = LevelKind.GiftsMade, Value = 9, Bound = 9 }, LengthUnit.Inch));
        Assert.Equal("proven least", LevelWords.Verdict(new Level { Kind = LevelKind.WoodUsed, Value = 9, Bound = 9 }, LengthUnit.Inch));
    }

    // 1000 against a bound of 961: 39 thousandths of the larger, which is 3.9 %, said as 4 %.
    [Fact]
    public void A_gap_is_said_in_whole_per_cent_rounded_up()
    {
        var level = new Level { Kind = LevelKind.WoodUsed, Value = 1_000_000, Bound = 961_000 };

        Assert.StartsWith("within 4 % of the best possible", LevelWords.Verdict(level, LengthUnit.Inch));
    }

    // One board foot is 144 cubic inches = 2 359 737.2 mm³ (by definition).
    [Fact]
    public void Wood_is_said_in_board_feet_or_litres()
    {
        var level = new Level { Kind = LevelKind.WoodUsed, Value = 2_359_737, Bound = 2_359_737 };

        Assert.Equal("1.00 bd ft", LevelWords.Figure(level, null, LengthUnit.Inch));
        Assert.Equal("2.36 l", LevelWords.Figure(level, null, LengthUnit.Millimetre));
    }
}
