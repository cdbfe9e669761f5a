namespace Scrapwright.Cli.Tests;

public sealed class WorthCommandTests(ExamplePlan example) : IClassFixture<ExamplePlan>
{
    [Fact]
    public async Task Without_a_workshop_jigs_are_weighed_by_minutes()
    {
        var ran = await Program.RunAsync("worth", example.Plan);

        Assert.Equal(0, ran.Code);
        Assert.Contains("Nobody said what an hour is worth, so only minutes are compared.\n", ran.Output, StringComparison.Ordinal);
        Assert.Matches("\n  [A-Z][a-z ]+: saves .* at \\d+ pieces? and \\d+ set-ups?; .* to make: (make it|do without.*)\n", ran.Output);
        ran.IsPlain();
    }

    [Fact]
    public async Task With_prices_and_the_worth_of_an_hour_it_says_what_costs_less_and_what_has_to_fit()
    {
        using var workshop = new Workshop();
        foreach (var file in Directory.EnumerateFiles(example.Shed)) File.Copy(file, workshop.PathOf(Path.GetFileName(file)));
        File.WriteAllText(workshop.PathOf("shop.json"), "{ \"climate\": \"shed-temperate\", \"hourWorth\": { \"amount\": 18, \"currency\": \"€\" } }");
        File.WriteAllText(workshop.PathOf("prices.csv"), "kind,name,price,days\ngift,pond-squares,1.50,3\njig,stop-block,12,2\n");

        var ran = await Program.RunAsync("worth", example.Plan, "--workshop", workshop.Folder);

        Assert.Equal(0, ran.Code);
        Assert.Contains("make or buy, at €18.00 an hour of your time.", ran.Output, StringComparison.Ordinal);
        Assert.Matches("\n  pond-squares: .* of your time left.*, worth €.*; €1\\.50 to buy, here in 3 days: buying costs €\\d+\\.\\d\\d less\n    bought ones must fit: .* × .* × ", ran.Output);
        Assert.Matches("\n  Stop block: saves .*, €12\\.00 to buy, here in 2 days: ", ran.Output);
        ran.IsPlain();

        File.WriteAllText(workshop.PathOf("prices.csv"), "kind,name,price\ngift,pond-squares,cheap\n");
        var refused = await Program.RunAsync("worth", example.Plan, "--workshop", workshop.Folder);
        Assert.Equal(2, refused.Code);
        Assert.Contains("prices.csv, line 2, column 19: found “cheap”, expected an amount", refused.Error, StringComparison.Ordinal);
    }
}
