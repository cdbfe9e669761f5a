using System.Text.Json.Nodes;

namespace Scrapwright.Cli.Tests;

public sealed class AuditAndSheetsTests(ExamplePlan example) : IClassFixture<ExamplePlan>
{
    public static TheoryData<string, string> NoPlans => new()
    {
        { "", "line 1, column 1: found" },
        { "{}", "missing required" },
        { "null", "expected a plan.json" },
        { "{\"version\": 1, \"request\": {\"workshop\": 5}}", "line 1" },
        { "label,species\nW1,walnut\n", "line 1, column 1" },
        { "\0\0\0\0", "line 1, column 1" },
        { new string('[', 100_000), "line 1, column" },
    };

    [Fact]
    public async Task A_plan_as_written_holds()
    {
        var ran = await Program.RunAsync("audit", example.Plan);

        Assert.Equal(0, ran.Code);
        Assert.StartsWith("The plan holds: 9 gifts, ", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_changed_number_is_found()
    {
        using var other = new Workshop();
        await WriteChangedAsync(other.PathOf("plan.json"));

        var ran = await Program.RunAsync("audit", other.PathOf("plan.json"));

        Assert.Equal(1, ran.Code);
        Assert.StartsWith("The plan does not hold: ", ran.Output, StringComparison.Ordinal);
        Assert.Matches("found [0-9]+, expected [0-9]+", ran.Output);
        ran.IsPlain();
    }

    [Theory]
    [MemberData(nameof(NoPlans))]
    public async Task What_is_no_plan_is_refused_with_its_place(string text, string said)
    {
        using var other = new Workshop();
        var file = other.PathOf("plan.json");
        await File.WriteAllTextAsync(file, text);

        var ran = await Program.RunAsync("audit", file);

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.StartsWith(file, ran.Error, StringComparison.Ordinal);
        Assert.Contains(said, ran.Error, StringComparison.Ordinal);
        ran.IsPlain();
    }

    [Fact]
    public async Task A_missing_plan_is_refused()
    {
        var ran = await Program.RunAsync("audit", Path.Combine(example.Out, "nowhere.json"));

        Assert.Equal(2, ran.Code);
        Assert.Contains("found “no such file”", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("letter", "612")]
    [InlineData("a4", "595")]
    public async Task Sheets_are_printed_on_the_paper_asked_for(string paper, string widthPt)
    {
        using var other = new Workshop();

        var ran = await Program.RunAsync("sheets", example.Plan, "--out", other.PathOf("s.pdf"), "--paper", paper);

        Assert.Equal(0, ran.Code);
        // ISO 32000: MediaBox in points of 1/72 in; Letter is 8.5 in = 612, A4 210 mm = 595.28.
        Assert.Matches($@"/MediaBox ?\[0 0 {widthPt}", await File.ReadAllTextAsync(other.PathOf("s.pdf"), System.Text.Encoding.Latin1));
    }

    [Fact]
    public async Task Sheets_are_drawn_as_pictures_too()
    {
        using var other = new Workshop();

        var ran = await Program.RunAsync("sheets", example.Plan, "--out", other.PathOf("sheet.svg"));

        Assert.Equal(0, ran.Code);
        var first = System.Xml.Linq.XDocument.Load(other.PathOf("sheet-01.svg"));
        Assert.Equal("svg", first.Root!.Name.LocalName);
        Assert.Equal("215.9mm", first.Root.Attribute("width")!.Value);
        Assert.False(File.Exists(other.PathOf("sheet.svg")));
    }

    [Fact]
    public async Task Labels_are_printed_too()
    {
        using var other = new Workshop();

        var ran = await Program.RunAsync("sheets", example.Plan, "--labels", "--out", other.PathOf("l.pdf"));

        Assert.Equal((0, $"Written: {other.PathOf("l.pdf")}\n"), (ran.Code, ran.Output));
        Assert.True(File.Exists(other.PathOf("l.pdf")));
    }

    [Fact]
    public async Task A_plan_that_does_not_hold_is_not_printed()
    {
        using var other = new Workshop();
        await WriteChangedAsync(other.PathOf("plan.json"));

        var ran = await Program.RunAsync("sheets", other.PathOf("plan.json"), "--out", other.PathOf("s.pdf"));

        Assert.Equal(1, ran.Code);
        Assert.Equal(["plan.json"], Directory.EnumerateFiles(other.Folder).Select(Path.GetFileName));
    }

    private async Task WriteChangedAsync(string file)
    {
        var plan = JsonNode.Parse(await File.ReadAllTextAsync(example.Plan))!;
        plan["levels"]![3]!["value"] = plan["levels"]![3]!["value"]!.GetValue<long>() + 1;
        await File.WriteAllTextAsync(file, plan.ToJsonString());
    }
}
