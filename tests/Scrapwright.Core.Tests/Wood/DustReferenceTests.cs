using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Wood;

public sealed class DustReferenceTests
{
    // [OshaDust] 15 total, 5 respirable; [NioshDust] 1; [AcgihDust] 0.5 for western redcedar, 1 for the rest; [HseDust] hardwood 3, softwood 5; [EuDust] hardwood 2. mg/m³, eight hours.
    [Theory]
    [InlineData("northern-red-oak", "osha-total 15, osha-respirable 5, niosh 1, acgih 1, hse-hardwood 3, eu-hardwood 2")]
    [InlineData("eastern-white-pine", "osha-total 15, osha-respirable 5, niosh 1, acgih 1, hse-softwood 5")]
    [InlineData("western-redcedar", "osha-total 15, osha-respirable 5, niosh 1, acgih-western-redcedar 0.5, hse-softwood 5")]
    public void Limits_of_a_species(string key, string limits) =>
        Assert.Equal(limits, string.Join(", ", DustLimits.For(SpeciesTable.Get(key)).Select(limit => FormattableString.Invariant($"{limit.Key} {limit.LimitMgPerM3}"))));

    // [AcgihDust]: oak and beech A1; birch, mahogany, teak, walnut A2; all others A4.
    [Theory]
    [InlineData("white-oak", DustClass.Known)]
    [InlineData("american-beech", DustClass.Known)]
    [InlineData("paper-birch", DustClass.Suspected)]
    [InlineData("true-mahogany", DustClass.Suspected)]
    [InlineData("teak", DustClass.Suspected)]
    [InlineData("black-walnut", DustClass.Suspected)]
    [InlineData("black-cherry", DustClass.NotClassified)]
    public void Classes_of_a_species(string key, DustClass expected) => Assert.Equal(expected, DustLimits.ClassOf(SpeciesTable.Get(key)));

    // [HseDust]; [EuDust]; [NioshDust]: what binds, and since when.
    [Theory]
    [InlineData("hse-hardwood", "3 mg/m³ inhalable dust, hardwood: Great Britain, HSE, since 2020-01-17")]
    [InlineData("eu-hardwood", "2 mg/m³ inhalable dust, hardwood: European Union, since 2023-01-18")]
    [InlineData("niosh", "1 mg/m³ total dust, any wood: United States, NIOSH, recommended")]
    [InlineData("acgih-western-redcedar", "0.5 mg/m³ inhalable dust, western red cedar: United States, ACGIH, recommended")]
    public void A_limit_is_said_in_one_line(string key, string words) => Assert.Equal(words, DustLimits.All.Single(limit => limit.Key == key).InWords);

    [Fact]
    public void The_caution_of_western_redcedar_has_its_limit() => Assert.Contains(
        SpeciesTable.Get("western-redcedar").Cautions, caution => caution.StartsWith("Dust limit 0.5 mg/m3", StringComparison.Ordinal));
}
