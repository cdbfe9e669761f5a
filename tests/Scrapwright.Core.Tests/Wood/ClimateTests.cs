using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Wood;

public sealed class ClimateTests
{
    public static TheoryData<string> Keys => [.. ClimateTable.All.Select(climate => climate.Key)];

    [Fact]
    public void The_default_is_there_and_keys_are_unique()
    {
        Assert.NotNull(ClimateTable.Find(ClimateTable.DefaultKey));
        Assert.Equal(ClimateTable.All.Length, ClimateTable.All.Select(climate => climate.Key).Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.Equal(ClimateTable.All.Length, ClimateTable.All.Select(climate => climate.Title).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void Every_climate_is_found_and_its_wood_is_between_dry_and_green(string key)
    {
        Climate climate = ClimateTable.Find(key.ToUpperInvariant())!;

        Assert.Equal(key, climate.Key);
        Assert.Equal(12, climate.Months.Length);
        Assert.InRange(climate.DriestPercent, 4, climate.MeanPercent);
        Assert.InRange(climate.MeanPercent, climate.DriestPercent, climate.DampestPercent);
        Assert.InRange(climate.DampestPercent, climate.DriestPercent, 22);
    }

    [Fact]
    public void Find_of_another_name_is_null() => Assert.Null(ClimateTable.Find("moon"));

    [Fact]
    public void A_heated_home_is_driest_in_winter() =>
        Assert.Equal(ClimateTable.Find("heated-cold")!.MoisturePercent(1), ClimateTable.Find("heated-cold")!.DriestPercent);

    [Fact]
    public void Frost_counts_as_the_start_of_the_table() =>
        Assert.Equal(EquilibriumMoisture.Percent(-1.1, 70), With(new ClimateMonth(-25, 70)).MoisturePercent(5));

    [Theory]
    [InlineData(0)]
    [InlineData(13)]
    public void There_are_twelve_months(int month) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => With(new ClimateMonth(20, 50)).MoisturePercent(month));

    [Theory]
    [InlineData(20, 101)]
    [InlineData(20, -1)]
    [InlineData(61, 50)]
    [InlineData(double.NaN, 50)]
    [InlineData(20, double.NaN)]
    public void Air_that_cannot_be_is_refused(double celsius, double percent) =>
        Assert.Throws<ArgumentException>(() => With(new ClimateMonth(celsius, percent)));

    [Fact]
    public void A_year_has_twelve_months()
    {
        Assert.False(Climate.AreMonthsOfAYear(default));
        Assert.False(Climate.AreMonthsOfAYear([]));
        Assert.False(Climate.AreMonthsOfAYear([.. Enumerable.Repeat(new ClimateMonth(20, 50), 11)]));
        Assert.True(Climate.AreMonthsOfAYear([.. Enumerable.Repeat(new ClimateMonth(20, 50), 12)]));
    }

    private static Climate With(ClimateMonth air) => new()
    {
        Key = "test",
        Title = "Test",
        Summary = "Twelve like months",
        Months = [.. Enumerable.Repeat(air, 12)],
        Source = new ValueSource("Estimate", "test", Confidence.Estimate),
    };
}
