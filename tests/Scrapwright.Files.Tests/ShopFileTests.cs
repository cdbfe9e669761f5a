using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

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
}
