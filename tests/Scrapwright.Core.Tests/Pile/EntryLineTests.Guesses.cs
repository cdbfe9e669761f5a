using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;

namespace Scrapwright.Core.Tests.Pile;

public sealed partial class EntryLineTests
{
    [Theory]
    [InlineData("wallnut 14 x 2 x 7/8", "black-walnut")]
    [InlineData("hard mapel 14 x 2 x 7/8", "sugar-maple")]
    [InlineData("hrad maple 14 x 2 x 7/8", "sugar-maple")]
    [InlineData("14 x 2 x 7/8 chery", "black-cherry")]
    [InlineData("wallnuts 14 x 2 x 7/8", "black-walnut")]
    public void Parse_takes_a_single_slip_and_says_that_it_guessed(string line, string key)
    {
        var understood = Understood(line);

        Assert.Equal(key, understood.Offcut.Species);
        Assert.True(understood.Readings.Single(r => r.Part == EntryPart.Species).Guessed);
        Assert.True(understood.NeedsALook);
    }

    [Theory]
    [InlineData("wallnutt 14 x 2 x 7/8", 1, "walnut")]
    [InlineData("14 x 2 x 7/8 sicamor", 14, "sycamore")]
    public void Parse_suggests_for_more_slips(string line, int column, string name)
    {
        var problem = Assert.Single(NotUnderstood(line).Problems);

        Assert.Equal((column, EntryMessages.ASpecies), (problem.Column, problem.Expected));
        Assert.Contains(name, problem.Suggestions);
        Understood(line.Replace(problem.Found, name, StringComparison.Ordinal));
    }

    [Fact]
    public void Parse_says_when_a_word_means_several_species()
    {
        Assert.True(Understood("oak 14 x 2 x 7/8").Readings.Single(r => r.Part == EntryPart.Species).Guessed);
        Assert.False(Understood("walnut 14 x 2 x 7/8").NeedsALook);
        Assert.False(Understood("red oak 14 x 2 x 7/8").NeedsALook);
    }

    [Theory]
    [InlineData("walnut 14 x 7/8 x 2")]
    [InlineData("walnut 7/8 x 2 x 14")]
    [InlineData("walnut 35.56 x 5.08 x 2.2225 cm")]
    [InlineData("walnut 14x2x1x3")]
    public void Parse_says_when_it_guessed_the_order(string line) => Assert.True(Understood(line).NeedsALook);

    [Theory]
    [InlineData("hard maple 12x3x3/4 x2 s2s", 2)]
    [InlineData("hard maple 12 x 3 x 2 x3", 3)]
    [InlineData("2x 12 x 3 x 1 hard maple", 2)]
    public void Parse_is_sure_of_a_count_that_stands_off(string line, int count)
    {
        var understood = Understood(line);

        Assert.Equal(count, understood.Offcut.Count);
        Assert.False(understood.NeedsALook);
    }

    [Fact]
    public void Readings_cover_the_stretches_they_tell_of()
    {
        const string Line = "W3: walnut 14 3/8 x 2 1/8 x 7/8 x3, s2s, rift, cupped 1/16, knot 4-5; shelf";

        var readings = Understood(Line).Readings;

        Assert.Equal(
            ["W3=label W3", "walnut=walnut", "14 3/8=14 3/8 in long", "2 1/8=2 1/8 in wide", "7/8=7/8 in thick", "3=3 pieces", "s2s=both faces surfaced",
             "rift=rift sawn", "cupped 1/16=1/16 in of cup", "knot 4-5=knot from 4 in to 5 in", "shelf=shelf"],
            readings.Select(r => $"{Line.Substring(r.Start, r.Length)}={r.Text}"));
        Assert.DoesNotContain(readings, r => r.Guessed);
    }

    [Theory]
    [InlineData("walnut 40 m x 2 x 7/8", EntryPart.Length)]
    [InlineData("walnut 40m x 60 mm x 20 mm", EntryPart.Length)]
    [InlineData("walnut 14 x 10 x 9", EntryPart.Thickness)]
    [InlineData("walnut 14 x 2 x 1/32", EntryPart.Thickness)]
    [InlineData("walnut 14 x 40 x 1", EntryPart.Width)]
    public void Parse_asks_back_about_absurd_sizes(string line, EntryPart part)
    {
        var doubt = Assert.Single(Understood(line).Doubts);

        Assert.Equal(part, doubt.Part);
        Assert.Contains("is that right?", doubt.Question, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("walnut 20 ft x 2 x 1/16")]
    [InlineData("walnut 14 x 8 x 8")]
    public void Parse_asks_nothing_at_the_limits(string line) => Assert.Empty(Understood(line).Doubts);

    [Fact]
    public void Parse_in_centimetres_does_not_share_a_unit_that_makes_no_sense()
    {
        var offcut = Understood("walnut 14 x 2 x 22 mm", LengthUnit.Inch).Offcut;

        Assert.Equal((In(14), In(2), Length.FromMillimetres(22)), (offcut.Length, offcut.Width, offcut.Thickness));
    }
}
