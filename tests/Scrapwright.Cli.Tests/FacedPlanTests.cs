namespace Scrapwright.Cli.Tests;

public sealed class FacedPlanTests
{
    private const string Thin = Workshop.PileColumns + "M1,hard maple,18,1 3/4,7/8\nM2,hard maple,18,1 3/4,7/8\nT1,walnut,19,1 3/4,1/2\nT2,walnut,18,2,7/16\n";

    [Fact]
    public async Task Thin_wood_is_planned_told_audited_and_printed()
    {
        using var workshop = Workshop.With(Thin);
        var planned = await Program.RunAsync("plan", workshop.Folder, "--out", workshop.PathOf("out"), "--seconds", "2", "--repeatable");
        var again = await Program.RunAsync("plan", workshop.Folder, "--out", workshop.PathOf("again"), "--from", workshop.PathOf("out/plan.json"), "--seconds", "2", "--repeatable");
        var audited = await Program.RunAsync("audit", workshop.PathOf("out/plan.json"));

        Assert.Equal(0, planned.Code);
        Assert.Contains("Glued face to face first:", planned.Output, StringComparison.Ordinal);
        Assert.Contains("  T1 on T2 gives T1+T2, 18 in × 1 3/4 in × 7/8 in, 4 clamps", planned.Output, StringComparison.Ordinal);
        Assert.Contains("Nothing changed from the plan before.", again.Output, StringComparison.Ordinal);
        Assert.Equal(0, audited.Code);
        Assert.Contains("the wood of 4 offcuts accounted for", audited.Output, StringComparison.Ordinal);
        Assert.True(new FileInfo(workshop.PathOf("out/sheets.pdf")).Length > 1000);
    }
}
