using System.Diagnostics;

namespace Scrapwright.Cli.Tests;

public sealed class PlanCommandTests(ExamplePlan example) : IClassFixture<ExamplePlan>
{
    [Fact]
    public void The_example_is_planned_in_full()
    {
        Assert.Equal(0, example.Demo.Code);
        Assert.Equal(0, example.Planned.Code);
        Assert.Contains("shed: 9 of 9 gifts", example.Planned.Output, StringComparison.Ordinal);
        Assert.Contains("Clamp loads: ", example.Planned.Output, StringComparison.Ordinal);
        Assert.Equal(["labels.pdf", "plan.json", "sheets.pdf"], Directory.EnumerateFiles(example.Out).Select(Path.GetFileName).Order());
        Assert.Equal("%PDF-"u8.ToArray(), File.ReadAllBytes(Path.Combine(example.Out, "sheets.pdf"))[..5]);
    }

    [Fact]
    public void Fits_and_what_is_used_up_are_told()
    {
        Assert.Matches(@"\nFits through the year: \d+ of \d+ hold\.\n", example.Planned.Output);
        Assert.Matches(@"\nUsed up on the way:\n  white or yellow glue \(PVA\): .* g .*\n", example.Planned.Output);
        Assert.Contains("  drying oil (linseed or tung): ", example.Planned.Output, StringComparison.Ordinal);
        Assert.Contains("  mineral oil and beeswax (does not dry): ", example.Planned.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Piped_output_is_plain()
    {
        example.Demo.IsPlain();
        example.Planned.IsPlain();
        Assert.Contains(" s  Gifts made 9 of 9; ", example.Planned.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_repeated_plan_is_the_same_and_replaces_the_first()
    {
        using var other = new Workshop();
        File.WriteAllText(other.PathOf("plan.json"), "an older plan");
        File.WriteAllText(other.PathOf("notes.txt"), "mine");

        var ran = await Program.RunAsync("plan", example.Shed, "--out", other.Folder, "--seconds", "1", "--repeatable");

        Assert.Equal(0, ran.Code);
        Assert.Equal(await File.ReadAllTextAsync(example.Plan), await File.ReadAllTextAsync(other.PathOf("plan.json")));
        Assert.Equal(["labels.pdf", "notes.txt", "plan.json", "sheets.pdf"], Directory.EnumerateFiles(other.Folder).Select(Path.GetFileName).Order());
    }

    [Fact]
    public async Task A_plan_made_from_another_lists_what_changed()
    {
        using var shed = new Workshop();
        foreach (var file in Directory.EnumerateFiles(example.Shed)) File.Copy(file, shed.PathOf(Path.GetFileName(file)));
        var offcut = Scrapwright.Core.Plans.PlanJson.Read(await File.ReadAllTextAsync(example.Plan)).GlueUps[0].Strips[0].Offcut;
        await File.WriteAllTextAsync(shed.PathOf("choices.json"), $"{{ \"saved\": [\"{offcut}\"] }}");

        var ran = await Program.RunAsync("plan", shed.Folder, "--out", shed.PathOf("out"), "--seconds", "1", "--repeatable", "--from", example.Plan);

        Assert.Equal(0, ran.Code);
        Assert.Contains("  Strips as before: ", ran.Output, StringComparison.Ordinal);
        Assert.Contains("\nChanged from the plan before:\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains($"offcut {offcut} stays whole\n", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bad_choices_and_a_bad_plan_to_begin_from_are_told_with_their_place()
    {
        using var shed = new Workshop();
        foreach (var file in Directory.EnumerateFiles(example.Shed)) File.Copy(file, shed.PathOf(Path.GetFileName(file)));
        var from = await Program.RunAsync("plan", shed.Folder, "--out", shed.PathOf("out"), "--from", shed.PathOf("pile.csv"));
        await File.WriteAllTextAsync(shed.PathOf("choices.json"), "{\n  \"saved\": [\"nowhere\"] }");

        var choices = await Program.RunAsync("plan", shed.Folder, "--out", shed.PathOf("out"));

        Assert.Equal((2, 2), (from.Code, choices.Code));
        Assert.Contains("choices.json, line 2, column 13: found “saved[0]: nowhere”, expected the label of an offcut in the pile.", choices.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_gift_too_many_is_left_out_with_its_reason()
    {
        using var shed = new Workshop();
        foreach (var file in Directory.EnumerateFiles(example.Shed)) File.Copy(file, shed.PathOf(Path.GetFileName(file)));
        await File.AppendAllTextAsync(shed.PathOf("gifts.csv"), "giant,,,striped-squares,count=24; size=8 in,,,9\n");

        var ran = await Program.RunAsync("plan", shed.Folder, "--out", shed.PathOf("out"), "--seconds", "1", "--repeatable", "--name", "Shed by the pond");

        Assert.Equal(1, ran.Code);
        Assert.Contains("Shed by the pond: 9 of 10 gifts", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Not made:\n  giant: ", ran.Output, StringComparison.Ordinal);
        Assert.True(File.Exists(shed.PathOf("out/plan.json")));
        ran.IsPlain();
    }

    [Fact]
    public async Task Without_enough_wood_nothing_is_written_and_what_is_missing_is_said()
    {
        using var workshop = Workshop.With(Workshop.PileColumns + "W1,walnut,18,2,1\n");

        var ran = await Program.RunAsync("plan", workshop.Folder, "--out", workshop.PathOf("out"), "--seconds", "1");

        Assert.Equal(1, ran.Code);
        Assert.Contains("no gift can be made. Nothing was written.\nNot made:\n  squares: ", ran.Output, StringComparison.Ordinal);
        Assert.Contains("more strip", ran.Output, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFiles(workshop.PathOf("out")));
        ran.IsPlain();
    }

    [Fact]
    public async Task Without_gifts_there_is_nothing_to_plan()
    {
        using var workshop = Workshop.With(Workshop.PileColumns + "W1,walnut,18,2,1\n", Workshop.GiftColumns);

        var ran = await Program.RunAsync("plan", workshop.Folder, "--out", workshop.PathOf("out"));

        Assert.Equal((1, "There is nothing to plan: gifts.csv has no gift. Nothing was written.\n"), (ran.Code, ran.Output));
    }

    [Fact]
    public async Task A_stop_keeps_the_best_plan_so_far()
    {
        using var other = new Workshop();

        var ran = await Program.RunWithAsync("", Stop, "plan", example.Shed, "--out", other.Folder, "--seconds", "600");
        var audit = await Program.RunAsync("audit", other.PathOf("plan.json"));

        Assert.Equal(0, ran.Code);
        Assert.Contains("9 of 9 gifts", ran.Output, StringComparison.Ordinal);
        Assert.Equal(0, audit.Code);
        ran.IsPlain();
    }

    [Fact]
    public async Task A_place_that_cannot_be_written_to_is_refused_before_the_search()
    {
        using var other = new Workshop();
        File.WriteAllText(other.PathOf("out"), "a file");

        var ran = await Program.RunAsync("plan", example.Shed, "--out", other.PathOf("out"), "--seconds", "600");

        Assert.Equal(2, ran.Code);
        Assert.Contains("expected a folder that can be written to.", ran.Error, StringComparison.Ordinal);
        Assert.Equal("a file", File.ReadAllText(other.PathOf("out")));
        ran.IsPlain();
    }

    [Theory]
    [InlineData("--seconds", "0", "--seconds: found 0, expected a number above 0")]
    [InlineData("--seconds", "NaN", "--seconds: found NaN, expected a number above 0")]
    [InlineData("--paper", "a5", "--paper: found “a5”, expected letter or a4.")]
    [InlineData("--seed", "-1", "--seed")]
    [InlineData("--seconds", "ten", "ten")]
    [InlineData("--colour", "red", "colour")]
    public async Task A_wrong_option_is_refused(string option, string value, string said)
    {
        var ran = await Program.RunAsync("plan", example.Shed, "--out", example.Shed, option, value);

        Assert.Equal(2, ran.Code);
        Assert.Contains(said, ran.Error, StringComparison.Ordinal);
        ran.IsPlain();
    }

    // The same as Ctrl+C, which a process without a terminal cannot be sent by key.
    private static void Stop(Process process)
    {
        // The shell's own kill: a small machine has no program of that name.
        using var kill = Process.Start("sh", ["-c", $"kill -TERM {process.Id}"]);
        kill.WaitForExit();
    }
}
