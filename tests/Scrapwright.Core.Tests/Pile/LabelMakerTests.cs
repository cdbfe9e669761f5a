using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;

namespace Scrapwright.Core.Tests.Pile;

public sealed class LabelMakerTests
{
    private static Offcut Of(string species, int count = 1) => new()
    {
        Label = "",
        Species = species,
        Length = Length.FromInches(9),
        Width = Length.FromInches(2),
        Thickness = Length.FromInches(1),
        Count = count,
    };

    [Theory]
    [InlineData("black-walnut", "W")]
    [InlineData("sugar-maple", "HM")]
    [InlineData("coast-douglas-fir", "DF")]
    [InlineData("old-growth-redwood", "OGR")]
    [InlineData("no-such-wood", "NSW")]
    [InlineData("ébène", "P")]
    public void Initials_come_from_the_short_name(string species, string initials) => Assert.Equal(initials, LabelMaker.Initials(species));

    [Fact]
    public void Next_counts_up_and_skips_what_is_taken()
    {
        var labels = new LabelMaker(["W2", "c1"]);

        Assert.Equal(["W1", "W3", "C2", "W4"], [labels.Next(Of("black-walnut")), labels.Next(Of("black-walnut")), labels.Next(Of("black-cherry")), labels.Next(Of("black-walnut"))]);
    }

    [Fact]
    public void Next_keeps_the_labels_of_single_pieces_free_too()
    {
        var labels = new LabelMaker(["W1b"]);

        Assert.Equal("W2", labels.Next(Of("black-walnut", count: 3)));
        Assert.False(labels.TryTake(Of("black-walnut") with { Label = "W2c" }));
    }
}
