using Scrapwright.Cli.Output;
using Spectre.Console;

namespace Scrapwright.Cli.Tests;

public sealed class CommandLineTests
{
    [Theory]
    [InlineData("scrapwright")]
    [InlineData("demo")]
    [InlineData("check")]
    [InlineData("plan")]
    [InlineData("audit")]
    [InlineData("ideas")]
    [InlineData("worth")]
    [InlineData("calendar")]
    [InlineData("given")]
    [InlineData("again")]
    [InlineData("sheets")]
    [InlineData("entry")]
    [InlineData("wood")]
    [InlineData("serve")]
    public async Task Help_is_as_it_was_read_and_found_good(string command)
    {
        var ran = await Program.RunAsync(command == "scrapwright" ? ["--help"] : [command, "--help"]);

        Assert.Equal((0, ""), (ran.Code, ran.Error));
        ran.IsPlain();
        Snapshot.Match("Help", command, string.Join('\n', ran.Output.Split('\n').Select(line => line.TrimEnd())));
    }

    [Fact]
    public async Task Without_arguments_the_help_is_shown()
    {
        var bare = await Program.RunAsync([]);
        var help = await Program.RunAsync("--help");

        Assert.Equal(help, bare);
    }

    [Fact]
    public async Task The_version_is_three_numbers()
    {
        var ran = await Program.RunAsync("--version");

        Assert.Equal(0, ran.Code);
        Assert.Matches(@"^\d+\.\d+\.\d+\n$", ran.Output);
    }

    [Theory]
    [InlineData("bake")]
    [InlineData("plan")]
    [InlineData("audit")]
    public async Task An_incomplete_command_is_refused(string command)
    {
        var ran = await Program.RunAsync(command);

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains("scrapwright --help", ran.Error, StringComparison.Ordinal);
        ran.IsPlain();
    }

    [Fact]
    public async Task A_demo_does_not_overwrite_without_force()
    {
        using var workshop = new Workshop();
        File.WriteAllText(workshop.PathOf("pile.csv"), "mine");

        var refused = await Program.RunAsync("demo", workshop.Folder);
        Assert.Equal(2, refused.Code);
        Assert.Equal("mine", File.ReadAllText(workshop.PathOf("pile.csv")));

        var forced = await Program.RunAsync("demo", workshop.Folder, "--force");
        Assert.Equal(0, forced.Code);
        Assert.StartsWith("label,species,", File.ReadAllText(workshop.PathOf("pile.csv")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Entry_lines_become_rows_that_check_reads()
    {
        var ran = await Program.RunWithAsync("walnut 14 3/8 x 2 1/8 x 7/8 x3, cupped 1/16, knot 4-5\ncherry 18 x 2 x 15/16 x2\n", null, "entry");

        Assert.Equal((0, ""), (ran.Code, ran.Error));
        using var workshop = Workshop.With(ran.Output);
        var check = await Program.RunAsync("check", workshop.Folder);
        Assert.Equal(0, check.Code);
        Assert.Contains(": 5 offcuts, 1 gift.", check.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Entry_lines_that_are_not_understood_are_named_and_the_others_kept()
    {
        var ran = await Program.RunWithAsync("walnut 14 x 2 x 1\nhm, no idea\n", null, "entry");

        Assert.Equal(2, ran.Code);
        Assert.Contains("W1,walnut,14 in,2 in,1 in", ran.Output, StringComparison.Ordinal);
        Assert.StartsWith("line 2: ", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_guess_in_an_entry_line_is_said()
    {
        var ran = await Program.RunAsync("entry", "walnutt 14 x 2 x 1");

        Assert.Equal(0, ran.Code);
        Assert.StartsWith("line 1: took “walnutt” for ", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Serve_says_when_it_cannot_listen()
    {
        using var workshop = new Workshop();

        var ran = await Program.RunAsync("serve", "--urls", "nowhere", "--data", workshop.Folder);

        Assert.Equal(2, ran.Code);
        Assert.StartsWith("--urls: nowhere is no address", ran.Error, StringComparison.Ordinal);
        ran.IsPlain();
    }

    [Fact]
    public async Task A_fault_is_one_sentence()
    {
        var error = new StringWriter();
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(TextWriter.Null), Ansi = AnsiSupport.No });
        using var workshop = Workshop.With(Workshop.PileColumns + "W1,walnut,18,2,1\n");

        var code = await CommandLine.RunAsync(["check", workshop.Folder], new Terminal(new BrokenWriter(), error, TextReader.Null, console, isLive: false));

        Assert.Equal(70, code);
        Assert.Equal("This is a fault of Scrapwright, not of what you gave it; please report it with these words: ArithmeticException: Two lines. Of it.\n", error.ToString());
    }

    private sealed class BrokenWriter : StringWriter
    {
        public override void WriteLine(string? value) => throw new ArithmeticException("Two lines.\nOf it.");
    }
}
