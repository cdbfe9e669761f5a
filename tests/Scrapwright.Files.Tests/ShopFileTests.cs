using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Files.Tests;

public sealed class ShopFileTests
{
    private static FileOutcome<Shop>.Refused Refused(string text) => Assert.IsType<FileOutcome<Shop>.Refused>(ShopFile.Parse(text));

    private static Shop Read(string text) => Assert.IsType<FileOutcome<Shop>.Read>(ShopFile.Parse(text)).Content;

    [Fact]
    public void Parse_takes_defaults_for_what_is_left_out()
    {
        var shop = Read("""
            {
              // the small one
              "unit": "millimetre",
              "jointer": { "maximumWidth": "200 mm" },
              "tableSaw": { "kerf": "3/32 in" },
            }
            """);

        Assert.Equal((LengthUnit.Millimetre, Length.FromMillimetres(200), Length.FromInches(3, 32)), (shop.Unit, shop.Jointer.MaximumWidth, shop.TableSaw.Kerf));
        Assert.Equal(new Shop().Jointer.MinimumLength, shop.Jointer.MinimumLength);
        Assert.Equal(new Shop().Planer, shop.Planer);
    }

    [Fact]
    public void Write_is_read_back_to_the_same_shop()
    {
        var shop = new Shop { Unit = LengthUnit.Millimetre, KeepLength = Length.FromPicometres(123_456_789), MinimumContrast = 9.5 };

        var read = Read(ShopFile.Write(shop));

        Assert.Equal(ShopFile.Write(shop), ShopFile.Write(read));
        Assert.Equal((shop.Unit, shop.KeepLength, shop.Allowances), (read.Unit, read.KeepLength, read.Allowances));
    }

    [Theory]
    [InlineData("{\n  \"unit\": \"furlong\"\n}", 2, "$.unit")]
    [InlineData("{\n  \"jointr\": {}\n}", 2, "$.jointr")]
    [InlineData("{\n  \"jointer\": { \"maximumWidth\": \"wide\" }\n}", 2, "$.jointer.maximumWidth")]
    [InlineData("{\n  \"jointer\": null\n}", 2, "$.jointer")]
    [InlineData("{\n  \"clamps\": null\n}", 2, "$.clamps")]
    [InlineData("{\n  \"clamps\": [ null ]\n}", 2, "clamps[0]")]
    [InlineData("{ \"denominator\": 32,\n \"denominator\": 16 }", 2, "")]
    [InlineData("{\n  \"unit\": \n", 3, "")]
    [InlineData("nonsense", 1, "$")]
    [InlineData("", 1, "")]
    [InlineData("null", 1, "null")]
    [InlineData("[]", 1, "$")]
    public void Parse_refuses_what_does_not_fit_with_line_and_path(string text, int line, string path)
    {
        var problem = Refused(text).Problems[0];

        Assert.Equal((ShopFile.Name, line), (problem.File, problem.Line));
        Assert.True(problem.Column >= 1);
        Assert.Contains(path, problem.Found, StringComparison.Ordinal);
        Assert.NotEmpty(problem.Expected);
    }

    [Fact]
    public void Parse_reports_every_number_out_of_range_at_its_place()
    {
        var problems = Refused("""
            {
              "denominator": 10,
              "confidencePercent": 100,
              "minimumContrast": -1,
              "tableSaw": { "kerf": "0 mm" },
              "keepLength": "-1 in",
              "allowances": { "sand": { "mean": "-1 mm", "spread": "0 mm" } },
              "rods": [ { "species": "walnut", "diameter": "3/8 in", "length": "36 in", "onHand": -1 } ]
            }
            """).Problems;

        Assert.Equal([2, 3, 4, 5, 6, 7, 8, 8], problems.Select(p => p.Line));
        Assert.Equal(18, problems[0].Column);
        Assert.Contains(problems, p => p.Expected.EndsWith("maybe black-walnut", StringComparison.Ordinal));
    }

    [Fact]
    public void Parse_reads_air_glue_finish_and_grits()
    {
        var months = string.Join(", ", Enumerable.Repeat("{ \"temperatureCelsius\": 12.5, \"relativeHumidityPercent\": 70 }", 12));
        var shop = Read($$"""
            {
              "ownClimates": [ { "name": "Shed by the pond", "months": [ {{months}} ] } ],
              "climate": "Shed by the pond",
              "pileMoisturePercent": 11.5,
              "clamps": [ { "name": "bar", "reach": "24 in", "count": 4, "forceNewtons": 2500 }, { "name": "old", "reach": "12 in", "count": 2 } ],
              "abrasives": { "grits": [ "P120", "P180" ], "largestStep": 1.6 }
            }
            """);

        Assert.Equal(("Shed by the pond", 11.5, 1.6), (shop.Climate, shop.PileMoisturePercent, shop.Abrasives.LargestStep));
        Assert.Equal(new ClimateMonth(12.5, 70), Assert.Single(shop.OwnClimates).Months[11]);
        Assert.Equal([2500, 4000], shop.Clamps.Select(clamp => clamp.ForceNewtons));
        Assert.Equal(ShopFile.Write(shop), ShopFile.Write(Read(ShopFile.Write(shop))));
    }

    [Theory]
    [InlineData("\"climate\": \"shed-colt\"", "climate: shed-colt", "a climate; maybe shed-cold")]
    [InlineData("\"glue\": \"white-glu\"", "glue: white-glu", "a glue; maybe white-glue")]
    [InlineData("\"glue\": \"custard\"", "glue: custard", "a glue: white-glue, water-resistant-glue, ")]
    [InlineData("\"finish\": \"drying oil\"", "finish: drying oil", "a finish; maybe drying-oil")]
    [InlineData("\"abrasives\": { \"grits\": [ \"P80\", \"p130\" ] }", "abrasives.grits[1]: p130", "a grit such as P120 (FEPA) or 120 (CAMI); maybe P120")]
    [InlineData("\"pileMoisturePercent\": 3.9", "pileMoisturePercent: 3.9", "4 to 30")]
    [InlineData("\"clamps\": [ { \"name\": \"a\", \"reach\": \"1 in\", \"count\": 1, \"forceNewtons\": 0 } ]", "clamps[0].forceNewtons: 0", "1 to 100000")]
    [InlineData("\"abrasives\": { \"largestStep\": 1 }", "abrasives.largestStep: 1", "a ratio above 1, at most 4")]
    [InlineData("\"abrasives\": { \"wearsAfterCm2\": 0 }", "abrasives.wearsAfterCm2: 0", "1 to 1000000")]
    [InlineData("\"abrasives\": { \"grits\": [] }", "abrasives.grits: none", "at least one grit")]
    [InlineData("\"abrasives\": { \"grits\": [ null ] }", "abrasives.grits[0]: null", FileMessages.AValue)]
    [InlineData("\"ownClimates\": [ { \"name\": \"a\", \"months\": [] } ]", "ownClimates[0].months: 0", "12 months, January to December")]
    [InlineData("\"ownClimates\": [ { \"name\": \"a\" } ]", "$", "months")]
    [InlineData("\"ownClimates\": [ null ]", "ownClimates[0]: null", FileMessages.AValue)]
    public void Parse_refuses_air_glue_and_grits_out_of_range(string member, string found, string expected)
    {
        var problem = Refused("{\n  " + member + "\n}").Problems[0];

        Assert.Equal(2, problem.Line);
        Assert.Contains(found, problem.Found, StringComparison.Ordinal);
        Assert.Contains(expected, problem.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_tells_every_broken_rule_by_its_path()
    {
        var wet = new OwnClimate("Cellar", [.. Enumerable.Repeat(new ClimateMonth(61, 101), 12)]);

        var problems = ShopRules.Check(new Shop { OwnClimates = [wet, wet with { Name = " cellar" }], Blades = ["rip\ncut"], Denominator = 12 });

        Assert.Equal(2 + (2 * 12 * 2) + 1, problems.Length);
        Assert.Contains(problems, p => p is { Path: "ownClimates[1].name", Expected: "a name of its own" });
        Assert.Contains(problems, p => p is { Path: "ownClimates[0].months[11].temperatureCelsius", Found: "61", Expected: "-50 to 60" });
        Assert.Contains(problems, p => p is { Path: "blades[0]" });
    }

    [Fact]
    public void The_default_shop_breaks_no_rule() => Assert.Empty(ShopRules.Check(new Shop()));
}
