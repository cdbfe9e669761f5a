using Scrapwright.Client.Wood;
using Scrapwright.Core.Wood;

namespace Scrapwright.Client.Tests.Wood;

public sealed class SourcedTextTests
{
    [Theory]
    [InlineData("Sensitiser (eyes), strength ++ of ++++ [ToxicWoods1990]", "Sensitiser (eyes), strength ++ of ++++", "ToxicWoods1990")]
    [InlineData("Open pores. Common practice, no source", "Open pores.", "common practice")]
    [InlineData("Trade is restricted. From memory", "Trade is restricted.", "from memory")]
    [InlineData("No source at all", "No source at all", "")]
    public void A_source_is_taken_off_the_end(string sentence, string text, string source) =>
        Assert.Equal(new SourcedText(text, source), SourcedText.Of(sentence));

    [Fact]
    public void Every_caution_in_the_table_has_a_source() =>
        Assert.All(SpeciesTable.All.SelectMany(species => species.Cautions), caution => Assert.NotEmpty(SourcedText.Of(caution).Source));
}
