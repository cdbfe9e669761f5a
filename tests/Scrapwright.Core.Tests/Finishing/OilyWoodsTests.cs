using Scrapwright.Core.Finishing;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Finishing;

public sealed class OilyWoodsTests
{
    [Theory]
    [InlineData("teak")]
    [InlineData("indian-rosewood")]
    [InlineData("Brazilian rosewood")]
    [InlineData("Cocobolo")]
    [InlineData("lignum vitae")]
    [InlineData("ipe")]
    public void Oily_woods_are_known_by_key_and_by_word(string species) => Assert.True(OilyWoods.IsOily(species));

    [Theory]
    [InlineData("black-walnut")]
    [InlineData("striped maple")]
    [InlineData("recipe")]
    [InlineData("")]
    public void Other_woods_are_not(string species) => Assert.False(OilyWoods.IsOily(species));

    [Fact]
    public void Every_key_in_the_list_is_a_species_of_the_table() =>
        // Those the table has under that key; a renamed species would slip out of the list.
        Assert.Equal(
            ["brazilian-rosewood", "goncalo-alves", "indian-rosewood", "ipe", "iroko", "teak"],
            SpeciesTable.All.Select(s => s.Key).Where(k => new[] { "teak", "brazilian-rosewood", "indian-rosewood", "iroko", "goncalo-alves", "ipe" }.Contains(k) && OilyWoods.IsOily(k)).Order(StringComparer.Ordinal));
}
