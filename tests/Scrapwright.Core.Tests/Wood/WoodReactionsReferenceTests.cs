using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Wood;

public sealed class WoodReactionsReferenceTests
{
    // [ToxicWoods1990], rows of the chart by its own letters.
    [Theory]
    [InlineData("Teak", "Sensitiser and lung inflammation (eyes, skin, breathing), from dust, strength ++ of ++++ [ToxicWoods1990]")] // S P; E S R; ++; D
    [InlineData("Black locust", "Irritant and nausea (eyes, skin), from leaves and bark, strength +++ of ++++ [ToxicWoods1990]")] // I N; E S; +++; LB
    [InlineData("Purpleheart", "Nausea, from wood, dust, strength ++ of ++++ [ToxicWoods1990]")] // blank; N; ++; W D
    [InlineData("Hemlock", "Linked to cancer of the nose (breathing), from dust [ToxicWoods1990]")] // C; R; ?; D
    [InlineData("Maple (spalted)", "Spalted wood only: sensitiser and lung inflammation (breathing), from dust, strength +++ of ++++ [ToxicWoods1990]")] // S P; R; +++; D
    [InlineData("Oleander", "Poisonous (nausea, heart), from dust, wood, leaves and bark, strength ++++ of ++++ [ToxicWoods1990]")] // DT; N C; ++++; D W LB
    [InlineData("Sassafras", "Sensitiser, poisonous and linked to cancer of the nose (breathing, nausea), from dust, wood, leaves and bark, strength + of ++++ [ToxicWoods1990]")]
    [InlineData("Mansonia", "Irritant, sensitiser and nausea (eyes, skin), from wood, dust, strength +++ of ++++ [ToxicWoods1990]")] // I S, then N; E S; +++, then +; W D, then D
    public void Rows_say_what_the_chart_says(string wood, string words) =>
        Assert.Equal(words, WoodReactions.All.Single(reaction => reaction.Wood == wood).InWords);

    // [ToxicWoods1990]: 44 rows. How common, by row.
    [Theory]
    [InlineData("Walnut (black)", ReactionFrequency.Common)]
    [InlineData("Cashew", ReactionFrequency.Rare)]
    [InlineData("Mahogany", ReactionFrequency.Uncommon)]
    [InlineData("Sassafras", ReactionFrequency.Common)] // C, R, U: the commonest
    public void All_rows_are_there_with_how_common_they_are(string wood, ReactionFrequency frequency)
    {
        Assert.Equal(44, WoodReactions.All.Length);
        Assert.Equal(44, WoodReactions.All.Select(reaction => reaction.Wood).Distinct().Count());
        Assert.Equal(frequency, WoodReactions.All.Single(reaction => reaction.Wood == wood).Frequency);
    }

    [Fact]
    public void Every_species_named_is_in_the_table_and_belongs_to_one_row()
    {
        string[] keys = [.. WoodReactions.All.SelectMany(reaction => reaction.SpeciesKeys)];

        Assert.Equal(keys.Distinct(), keys);
        Assert.All(keys, key => Assert.Equal(key, SpeciesTable.Get(key).Key));
        Assert.Equal(21, WoodReactions.All.Count(reaction => !reaction.SpeciesKeys.IsEmpty));
    }

    // The strings of a species and the structured data are one: nothing of the chart or the classes is written a second time.
    [Fact]
    public void Cautions_agree_with_the_chart_and_the_classes() => Assert.All(SpeciesTable.All, species =>
    {
        Assert.Equal(
            WoodReactions.For(species).Select(reaction => reaction.InWords),
            species.Cautions.Where(caution => caution.EndsWith("[ToxicWoods1990]", StringComparison.Ordinal)));
        Assert.Equal(
            DustLimits.ClassOf(species) switch { DustClass.Known => "A1", DustClass.Suspected => "A2", _ => "" },
            string.Concat(((string[])["A1", "A2"]).Where(letters => species.Cautions.Any(caution => caution.Contains($"({letters}) [AcgihDust]", StringComparison.Ordinal)))));
    });
}
