using System.Globalization;

namespace Scrapwright.Cli.Tests;

public sealed class GivenCommandTests
{
    private const string Strips = Workshop.PileColumns + "W1,walnut,18,1 5/8,7/8\nM1,hard maple,18,1 5/8,7/8\nW2,walnut,18,1 5/8,7/8\n";

    private const string Gifts = "gift,recipient,circle,design,options,occasion,due\n"
        + "squares,gate keeper,helpers,striped-squares,species=walnut+hard maple,Fair,\nstand,gate keeper,helpers,rod-stand,holds=squares,Fair,\nother,pond helper,helpers,striped-squares,,,2040-05-01\n";

    private const string Given = "date,occasion,recipient,circle,design,options,note\n"
        + "2025-09-20,Fair,gate keeper,helpers,striped-squares,species=hard maple+walnut,\n2025-09-20,Fair,pond helper,helpers,u-stand,,\n2024-09-21,Fair,gate keeper,helpers,u-stand,,\n";

    // What has come does not depend on the day this runs: the fair was three days ago, or comes in three.
    private static string Day(int days) => DateOnly.FromDateTime(DateTime.Now).AddDays(days).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static Workshop Shed(int days = -3, string repeats = "")
    {
        var workshop = Workshop.With(Strips, Gifts);
        File.WriteAllText(workshop.PathOf("occasions.csv"), $"occasion,date,repeats\nFair,{Day(days)},{repeats}\n");
        File.WriteAllText(workshop.PathOf("given.csv"), Given);
        return workshop;
    }

    private static string[] Texts(Workshop workshop) => [.. Directory.EnumerateFiles(workshop.Folder).Order(StringComparer.Ordinal).Select(File.ReadAllText)];

    [Fact]
    public async Task It_says_who_got_what_by_year_and_by_recipient()
    {
        using var workshop = Shed();

        var all = await Program.RunAsync("given", workshop.Folder);
        var one = await Program.RunAsync("given", workshop.Folder, "--to", "Gate keeper");

        Assert.Equal((0, 0), (all.Code, one.Code));
        Assert.EndsWith(
            ": 3 gifts given.\n2025:\n  20 September, Fair: gate keeper: striped squares (species=hard maple+walnut)\n  20 September, Fair: pond helper: stand with u-shaped sides\n"
            + "2024:\n  21 September, Fair: gate keeper: stand with u-shaped sides\n",
            all.Output, StringComparison.Ordinal);
        Assert.Contains(": 2 gifts given to Gate keeper.", one.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("pond", one.Output, StringComparison.Ordinal);
        all.IsPlain();
    }

    [Fact]
    public async Task Gifts_of_an_occasion_go_from_one_file_to_the_other()
    {
        using var workshop = Shed(repeats: "every year");

        var ran = await Program.RunAsync("given", workshop.Folder, "--occasion", "fair");

        Assert.Equal((0, ""), (ran.Code, ran.Error));
        ran.IsPlain();
        var given = await File.ReadAllTextAsync(workshop.PathOf("given.csv"), TestContext.Current.CancellationToken);
        Assert.StartsWith(Given, given, StringComparison.Ordinal);
        Assert.Contains($"{Day(-3)},Fair,gate keeper,helpers,striped-squares,species=walnut+hard maple,\n", given, StringComparison.Ordinal);
        Assert.Equal(2, (await File.ReadAllLinesAsync(workshop.PathOf("gifts.csv"), TestContext.Current.CancellationToken)).Length);
        var next = DateOnly.ParseExact((await File.ReadAllLinesAsync(workshop.PathOf("occasions.csv"), TestContext.Current.CancellationToken))[1].Split(',')[1], "yyyy-MM-dd", CultureInfo.InvariantCulture);
        Assert.InRange(next.DayNumber - DateOnly.FromDateTime(DateTime.Now).DayNumber, 350, 370);
        Assert.Equal(0, (await Program.RunAsync("check", workshop.Folder)).Code);
    }

    [Theory]
    [InlineData(3, "that has come", "--occasion", "Fair")]
    [InlineData(-3, "maybe Fair", "--occasion", "Fiar")]
    [InlineData(-3, "maybe stand", "--occasion", "Fair", "--except", "stnad")]
    [InlineData(-3, "stand holds squares", "--occasion", "Fair", "--except", "stand")]
    [InlineData(-3, "at least one gift", "--occasion", "Fair", "--except", "stand,squares")]
    [InlineData(-3, "a day such as", "--occasion", "Fair", "--on", "yesterday")]
    [InlineData(-3, "without --occasion", "--on", "2026-01-01")]
    [InlineData(-3, "expected one of them", "--occasion", "Fair", "--to", "x")]
    public async Task When_anything_is_wrong_nothing_is_written(int days, string expected, params string[] arguments)
    {
        using var workshop = Shed(days);
        var before = Texts(workshop);

        var ran = await Program.RunAsync(["given", workshop.Folder, .. arguments]);

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains(expected, ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, Texts(workshop));
        ran.IsPlain();
    }

    [Fact]
    public async Task A_faulty_file_is_told_with_its_place_and_nothing_is_written()
    {
        using var workshop = Shed();
        await File.AppendAllTextAsync(workshop.PathOf("given.csv"), "soon,,x,,u-stand,,\n", TestContext.Current.CancellationToken);
        var before = Texts(workshop);

        var ran = await Program.RunAsync("given", workshop.Folder, "--occasion", "Fair");

        Assert.Equal(2, ran.Code);
        Assert.Equal("given.csv, line 5, column 1: found “soon”, expected a date such as 2027-06-19.\n", ran.Error);
        Assert.Equal(before, Texts(workshop));
    }

    [Fact]
    public async Task Check_and_plan_doubt_what_somebody_has_had()
    {
        using var workshop = Shed(3);
        const string Doubt = "Had before:\n  squares: gate keeper has had the very same (striped squares) on 20 September 2025, Fair.\n";

        var check = await Program.RunAsync("check", workshop.Folder);
        var plan = await Program.RunAsync("plan", workshop.Folder, "--out", workshop.PathOf("out"), "--seconds", "1", "--repeatable");

        Assert.Equal(0, check.Code);
        Assert.Contains(Doubt, check.Output, StringComparison.Ordinal);
        Assert.Contains("Fair: 2 gifts\n", check.Output, StringComparison.Ordinal);
        Assert.Contains(Doubt, plan.Output, StringComparison.Ordinal);
        Assert.Contains($"\"due\": \"{Day(3)}\"", await File.ReadAllTextAsync(workshop.PathOf("out/plan.json"), TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Again_prints_rows_that_gifts_csv_takes_and_nobody_has_had()
    {
        using var workshop = Shed();
        await File.WriteAllTextAsync(workshop.PathOf("gifts.csv"), "gift,design\n", TestContext.Current.CancellationToken);

        var ran = await Program.RunAsync("again", workshop.Folder, "--occasion", "fair");
        await File.WriteAllTextAsync(workshop.PathOf("gifts.csv"), ran.Output, TestContext.Current.CancellationToken);
        var check = await Program.RunAsync("check", workshop.Folder);

        Assert.Equal((0, 0), (ran.Code, check.Code));
        Assert.Equal(3, ran.Output.Trim().Split('\n').Length);
        Assert.Contains("gate keeper: stand of two plates and four rods with 4 squares, 4 in, a design they have not had.", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Had before", check.Output, StringComparison.Ordinal);
        ran.IsPlain();
    }

    [Fact]
    public async Task Again_writes_a_new_file_only()
    {
        using var workshop = Shed();
        await File.WriteAllTextAsync(workshop.PathOf("gifts.csv"), "gift,design\n", TestContext.Current.CancellationToken);

        var first = await Program.RunAsync("again", workshop.Folder, "--occasion", "Fair", "--out", workshop.PathOf("next.csv"));
        var second = await Program.RunAsync("again", workshop.Folder, "--occasion", "Fair", "--out", workshop.PathOf("next.csv"));

        Assert.Equal((0, 2), (first.Code, second.Code));
        Assert.Contains("a new file", second.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Fiar", 2, "one of Fair")]
    [InlineData("Fair", 1, "on the list already")]
    public async Task Again_says_what_it_cannot_propose(string occasion, int code, string expected)
    {
        using var workshop = Shed();
        await File.WriteAllTextAsync(workshop.PathOf("given.csv"), "date,occasion,recipient,design\n2025-09-20,Fair,gate keeper,u-stand\n", TestContext.Current.CancellationToken);

        var ran = await Program.RunAsync("again", workshop.Folder, "--occasion", occasion);

        Assert.Equal((code, ""), (ran.Code, ran.Output));
        Assert.Contains(expected, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ideas_for_somebody_leave_out_what_they_have_had()
    {
        using var workshop = Shed();
        await File.WriteAllTextAsync(workshop.PathOf("gifts.csv"), "gift,design\n", TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(workshop.PathOf("given.csv"), "date,recipient,design\n2025-09-20,pond helper,rod-stand\n2025-09-20,gate keeper,striped-squares\n2024-09-20,gate keeper,u-stand\n", TestContext.Current.CancellationToken);

        var free = await Program.RunAsync("ideas", workshop.Folder, "--for", "Pond helper", "--seconds", "2", "--repeatable");
        var had = await Program.RunAsync("ideas", workshop.Folder, "--for", "gate keeper", "--seconds", "2", "--repeatable");

        Assert.Contains("4 striped squares, 4 in: 1", free.Output, StringComparison.Ordinal);
        Assert.Contains("Not proposed, because Pond helper has had it: stand with rods.", free.Output, StringComparison.Ordinal);

        // These strips give squares and one stand, and nothing else.
        Assert.Contains("4 striped squares, 4 in: 1", had.Output, StringComparison.Ordinal);
        Assert.Contains("gate keeper has had all of this before: nothing else can be made.", had.Output, StringComparison.Ordinal);
    }
}
