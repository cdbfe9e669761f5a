using System.Collections.Immutable;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Files.Tests;

public sealed class GiftsFileTests
{
    private const string Names = "gift,recipient,circle,design,options,due,priority\n";

    private static readonly Shop Shop = new();

    private static FileProblem OnlyProblem(string text) =>
        Assert.Single(Assert.IsType<FileOutcome<ImmutableArray<Gift>>.Refused>(GiftsFile.Parse(text, Shop)).Problems);

    private static ImmutableArray<Gift> Read(string text) =>
        Assert.IsType<FileOutcome<ImmutableArray<Gift>>.Read>(GiftsFile.Parse(text, Shop)).Content;

    [Fact]
    public void Parse_reads_a_gift()
    {
        var gift = Assert.Single(Read(Names + "seed,seed-swap table,stalls,striped-squares,Count = 4; size=4 in;,2027-06-19,1\n"));

        Assert.Equal(("seed", "seed-swap table", "stalls", "striped-squares", 1), (gift.Label, gift.Recipient, gift.Circle, gift.Design, gift.Priority));
        Assert.Equal(new DateOnly(2027, 6, 19), gift.Due);
        Assert.Equal([new("count", "4"), new("size", "4 in")], gift.Options);
    }

    [Fact]
    public void Parse_needs_only_gift_and_design()
    {
        var gift = Assert.Single(Read("design;gift\nrod-stand;seed\n"));

        Assert.Equal(new Gift { Label = "seed", Design = "rod-stand" }, gift with { Options = new Gift { Label = "", Design = "" }.Options });
        Assert.Empty(gift.Options);
    }

    [Theory]
    [InlineData(",x,y,rod-stand,,,", 1, "", FileMessages.AGiftName)]
    [InlineData("b,x,y,,,,", 7, "", FileMessages.AValue)]
    [InlineData("b,x,y,rod-stand,,19.6.2027,", 18, "19.6.2027", FileMessages.ADate)]
    [InlineData("b,x,y,rod-stand,,2027-02-30,", 18, "2027-02-30", FileMessages.ADate)]
    [InlineData("b,x,y,rod-stand,,,10", 19, "10", FileMessages.APriority)]
    [InlineData("b,x,y,rod-stand,,,soon", 19, "soon", FileMessages.APriority)]
    [InlineData("b,x,y,rod-stand,count 4,,", 17, "count 4", FileMessages.AnOption)]
    [InlineData("b,x,y,rod-stand,count=4; Count=5,,", 17, "Count=5", "each option only once")]
    [InlineData("a,x,y,rod-stand,,,", 1, "a", "a label of its own; line 2 has it too")]
    public void Parse_refuses_a_row_with_its_place(string row, int column, string found, string expected) =>
        Assert.Equal(new FileProblem(GiftsFile.Name, 3, column, found, expected), OnlyProblem(Names + "a,x,y,rod-stand,,,\n" + row + "\n"));

    [Fact]
    public void Parse_reads_where_a_gift_will_live_also_by_the_shops_own_names()
    {
        var shop = new Shop { OwnClimates = [new OwnClimate("Granny's flat", [.. Enumerable.Repeat(new ClimateMonth(21, 40), 12)])] };

        var outcome = GiftsFile.Parse("gift,design,climate\na,rod-stand,heated-cold\nb,rod-stand,granny's flat\nc,rod-stand,\n", shop);

        var gifts = Assert.IsType<FileOutcome<ImmutableArray<Gift>>.Read>(outcome).Content;
        Assert.Equal(["heated-cold", "granny's flat", ""], gifts.Select(gift => gift.Climate));
    }

    [Theory]
    [InlineData("heated-col", "a climate; maybe heated-cold")]
    [InlineData("granny's flat", "a climate: heated-temperate, heated-cold, hot-dry")]
    public void Parse_refuses_a_climate_nobody_knows_and_names_the_nearest(string climate, string expected)
    {
        var problem = OnlyProblem($"gift,design,climate\na,rod-stand,{climate}\n");

        Assert.Equal((2, 13, climate), (problem.Line, problem.Column, problem.Found));
        Assert.StartsWith(expected, problem.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Parse_refuses_a_finish_nobody_knows_and_names_the_nearest() =>
        Assert.Equal(
            new FileProblem(GiftsFile.Name, 2, 13, "shelac", "a finish; maybe shellac"),
            OnlyProblem("gift,finish,design\nanother one,shelac,rod-stand\n"));

    [Fact]
    public void Parse_names_missing_columns() =>
        Assert.Equal(FileMessages.TheColumn("design"), OnlyProblem("gift,recipient\na,b\n").Expected);

    [Fact]
    public void Write_is_read_back_to_the_same_gifts()
    {
        var gifts = ExampleWorkshop.Request.Gifts;

        var read = Read(GiftsFile.Write(gifts));

        Assert.Equal(GiftsFile.Write(gifts), GiftsFile.Write(read));
        Assert.Equal(gifts.Select(g => (g.Label, g.Recipient, g.Circle, g.Design, g.Due, g.Priority)), read.Select(g => (g.Label, g.Recipient, g.Circle, g.Design, g.Due, g.Priority)));
        Assert.Equal(gifts.Select(g => (g.Climate, g.Finish)), read.Select(g => (g.Climate, g.Finish)));
        Assert.Equal(gifts.SelectMany(g => g.Options), read.SelectMany(g => g.Options));
    }
}
