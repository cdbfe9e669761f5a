using System.Collections.Immutable;
using System.Text;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files.Tests;

public sealed class WorthFilesTests
{
    [Fact]
    public void Prices_are_read_exactly_with_points_or_commas()
    {
        Price[] expected = [new(PriceKind.Gift, "pond-squares", 45.10m, 3) { Note = "market" }, new(PriceKind.Part, "rod-stand/rail", 3.20m, 0)];

        Assert.Equal(expected, Prices("kind,name,price,days,note\ngift,pond-squares,45.10,3,market\nPart,rod-stand/rail,3.20,,\n"));
        Assert.Equal(expected, Prices("kind;name;price;days;note\ngift;pond-squares;45,10;3;market\npart;rod-stand/rail;3,20;;\n"));
        Assert.Equal(expected, Prices(PricesFile.Write(expected)));
    }

    [Theory]
    [InlineData("gfit,a,1,,", 1, "maybe gift")]
    [InlineData("gift,a,€5,,", 8, FileMessages.AnAmount)]
    [InlineData("gift,a,-5,,", 8, FileMessages.AnAmount)]
    [InlineData("gift,,5,,", 6, "some words")]
    [InlineData("part,square,5,,", 6, "gift/part, such as pond-squares/square")]
    [InlineData("item,drill bit,5,soon,", 18, "whole days")]
    public void A_wrong_price_is_told_with_its_place(string row, int column, string expected)
    {
        var problem = Assert.Single(Assert.IsType<FileOutcome<ImmutableArray<Price>>.Refused>(PricesFile.Parse("kind,name,price,days,note\n" + row + "\n")).Problems);

        Assert.Equal((PricesFile.Name, 2, column), (problem.File, problem.Line, problem.Column));
        Assert.Contains(expected, problem.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_prices_for_one_thing_are_refused()
    {
        var problem = Assert.Single(Assert.IsType<FileOutcome<ImmutableArray<Price>>.Refused>(PricesFile.Parse("kind,name,price\njig,stop-block,5\njig,Stop-Block,6\n")).Problems);

        Assert.Equal((3, "each only once; line 2 has it too"), (problem.Line, problem.Expected));
    }

    [Fact]
    public void A_jig_of_the_table_takes_its_figures_where_a_cell_is_empty()
    {
        var jig = Assert.Single(Jigs("jig,make-minutes,have\nstop-block,10,yes\n"));

        var known = JigTable.All.Single(j => j.Key == "stop-block");
        Assert.Equal((10, true, known.SetUpMinutes, known.EachSeconds, known.Name), (jig.MakeMinutes, jig.IsOwned, jig.SetUpMinutes, jig.EachSeconds, jig.Name));
        Assert.Equal(known.Operations.AsEnumerable(), jig.Operations);
    }

    [Fact]
    public void An_own_jig_is_read_back_as_it_was_written()
    {
        Jig own = new() { Key = "lap-fence", Name = "Lap fence", Operations = [Operation.CutLaps, Operation.CutMitres], EachSeconds = 45, MakeMinutes = 90, Material = 7.25m, OnlySmall = true, Note = "beech" };

        var read = Assert.Single(Jigs(JigsFile.Write([own])));

        Assert.Equal(own.Operations.AsEnumerable(), read.Operations);
        Assert.Equal(own with { Operations = read.Operations }, read);
        Assert.Equal("lap-fence", JigTable.With([own])[^1].Key);
        Assert.Equal(JigTable.All.Length + 1, JigTable.With([own]).Length);
    }

    [Theory]
    [InlineData("lap-fence,,,,,5,,,,", 12, "at least one operation")]
    [InlineData("lap-fence,,cut-lapps,,,5,,,,", 12, "maybe cut-laps")]
    [InlineData("stop-block,,,,,0,,,,", 16, "1 to 10000")]
    [InlineData("stop-block,,,,,,,,maybe,", 19, FileMessages.YesOrNo)]
    [InlineData("Stop block,,sand,,,5,,,,", 1, FileMessages.AKey)]
    public void A_wrong_jig_is_told_with_its_place(string row, int column, string expected)
    {
        var refused = Assert.IsType<FileOutcome<ImmutableArray<Jig>>.Refused>(JigsFile.Parse(string.Join(',', JigsFile.Columns) + "\n" + row + "\n"));

        Assert.All(refused.Problems, p => Assert.Equal((JigsFile.Name, 2), (p.File, p.Line)));
        Assert.Equal(column, refused.Problems.First(p => p.Expected.Contains(expected, StringComparison.Ordinal)).Column);
    }

    [Fact]
    public void Notes_of_a_workshop_are_written_and_read_back()
    {
        var notes = new WorkshopNotes { Prices = [new(PriceKind.Item, "drill bit", 6.5m, 2)], Jigs = [JigTable.All[0] with { IsOwned = true }], Times = [new(new(2027, 5, 4), Operation.Sand, 10, 20)] };

        var files = WorkshopFiles.Write(ExampleWorkshop.Request, null, null, notes).ToDictionary(f => f.Key, f => Encoding.UTF8.GetBytes(f.Value));
        var read = Assert.IsType<FileOutcome<WorkshopNotes>.Read>(WorkshopFiles.ReadNotes(files)).Content;

        Assert.Equal((notes.Prices[0], notes.Times[0], true), (read.Prices[0], read.Times[0], read.Jigs[0].IsOwned));
        Assert.IsType<FileOutcome<Core.Plans.PlanRequest>.Read>(WorkshopFiles.Read("shed", files));
        Assert.DoesNotContain(WorkshopFiles.Write(ExampleWorkshop.Request).Keys, name => name is PricesFile.Name or JigsFile.Name or TimesFile.Name);
    }

    [Theory]
    [InlineData("{ \"hourWorth\": { \"amount\": 18.50, \"currency\": \"€\" } }", "18.50")]
    [InlineData("{ \"hourWorth\": { \"amount\": 20 } }", "20")]
    public void The_worth_of_an_hour_is_read_exactly(string json, string amount)
    {
        var shop = Assert.IsType<FileOutcome<Shop>.Read>(ShopFile.Parse(json)).Content;

        Assert.Equal(decimal.Parse(amount, System.Globalization.CultureInfo.InvariantCulture), shop.HourWorth!.Amount);
        Assert.Equal(shop.HourWorth, Assert.IsType<FileOutcome<Shop>.Read>(ShopFile.Parse(ShopFile.Write(shop))).Content.HourWorth);
    }

    [Fact]
    public void An_hour_worth_nothing_is_refused() =>
        Assert.Equal("hourWorth.amount: 0", Assert.Single(Assert.IsType<FileOutcome<Shop>.Refused>(ShopFile.Parse("{ \"hourWorth\": { \"amount\": 0 } }")).Problems).Found);

    private static Price[] Prices(string text) => [.. Assert.IsType<FileOutcome<ImmutableArray<Price>>.Read>(PricesFile.Parse(text)).Content];

    private static ImmutableArray<Jig> Jigs(string text) => Assert.IsType<FileOutcome<ImmutableArray<Jig>>.Read>(JigsFile.Parse(text)).Content;
}
