using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Audit;

namespace Scrapwright.Cli.Tests;

public sealed class CalendarCommandTests(ExamplePlan example) : IClassFixture<ExamplePlan>
{
    [Fact]
    public async Task It_puts_the_example_on_evenings_that_hold()
    {
        using var workshop = new Workshop();

        var ran = await Program.RunAsync("calendar", example.Plan, "--workshop", example.Shed, "--out", workshop.Folder, "--start", "2027-01-05", "--seconds", "2", "--repeatable");

        Assert.Equal(0, ran.Code);
        Assert.Contains("Everything is ready in time.", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Tuesday 5 January 2027, 18:30 to 21:30:\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains(" days to spare)\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains("How sure it is, of 2000 times with shorter and longer tasks:\n", ran.Output, StringComparison.Ordinal);
        Assert.Matches("\n  everything: in time .* times? in .*; ready by \\w+day \\d+ \\w+ 19 times in 20; start by |\n  everything: in time nearly always ", ran.Output);
        Assert.DoesNotContain("What holds it up", ran.Output, StringComparison.Ordinal);
        ran.IsPlain();
        var calendar = CalendarJson.Read(File.ReadAllText(workshop.PathOf("calendar.json")));
        Assert.Empty(ScheduleAudit.Check(calendar.Problem, calendar.Schedule));
        Assert.StartsWith("BEGIN:VCALENDAR\r\n", File.ReadAllText(workshop.PathOf("calendar.ics")), StringComparison.Ordinal);
        Assert.StartsWith("%PDF-", File.ReadAllText(workshop.PathOf("week.pdf")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Too_late_a_start_is_an_answer_with_code_1_and_the_days()
    {
        using var workshop = new Workshop();

        var ran = await Program.RunAsync("calendar", example.Plan, "--workshop", example.Shed, "--out", workshop.Folder, "--start", "2027-06-17 18:00", "--seconds", "1", "--repeatable");

        Assert.Equal(1, ran.Code);
        Assert.Contains("gifts late.", ran.Output, StringComparison.Ordinal);
        Assert.Contains("(LATE by ", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Asked_why_it_says_what_was_tried()
    {
        using var workshop = new Workshop();

        var ran = await Program.RunAsync("calendar", example.Plan, "--workshop", example.Shed, "--out", workshop.Folder, "--start", "2027-05-31 12:00", "--seconds", "1", "--why");

        // How much is tried within the time depends on the machine; what the answers say is tested where they are given.
        Assert.Equal(1, ran.Code);
        Assert.Matches("\n(What holds it up:\n  with |Nothing that was tried makes it sooner by a day)", ran.Output);
        Assert.Matches("\n(What could be done:\n  \\S|Tried without gain: |No time to try: )", ran.Output);
        ran.IsPlain();
    }

    [Fact]
    public async Task The_makers_own_times_are_in_the_calendar_and_said()
    {
        using var workshop = new Workshop();
        foreach (var file in Directory.EnumerateFiles(example.Shed)) File.Copy(file, workshop.PathOf(Path.GetFileName(file)));
        File.WriteAllText(workshop.PathOf("times.csv"), "date,operation,planned,took\n2027-01-02,sand,20,40\n2027-01-03,sand,30,60\n2027-01-03,rip,10,10\n");

        var ran = await Program.RunAsync("calendar", example.Plan, "--workshop", workshop.Folder, "--out", workshop.Folder, "--start", "2027-01-05", "--seconds", "1", "--repeatable");

        // 2^(2/5) = 1.32.
        Assert.Contains("Your own pace, from 3 readings:\n  Rip strips: takes you as long as usual, from 1 reading\n  Sand: takes you 1.32 times as long, from 2 readings\n", ran.Output, StringComparison.Ordinal);
        Assert.Equal(3, CalendarJson.Read(File.ReadAllText(workshop.PathOf("calendar.json"))).Times.Length);
        ran.IsPlain();

        File.AppendAllText(workshop.PathOf("times.csv"), "2027-01-04,snad,1,1\n");
        var refused = await Program.RunAsync("calendar", example.Plan, "--workshop", workshop.Folder, "--out", workshop.Folder);
        Assert.Equal(2, refused.Code);
        Assert.Contains("times.csv, line 5, column 12: found “snad”, expected an operation; maybe sand", refused.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Hours_without_an_evening_say_what_does_not_fit()
    {
        using var workshop = new Workshop();
        foreach (var file in Directory.EnumerateFiles(example.Shed)) File.Copy(file, workshop.PathOf(Path.GetFileName(file)));
        await File.WriteAllTextAsync(workshop.PathOf("hours.json"), """{ "week": [] }""");

        var ran = await Program.RunAsync("calendar", example.Plan, "--workshop", workshop.Folder, "--out", workshop.PathOf("out"), "--seconds", "1");

        Assert.Equal(1, ran.Code);
        Assert.Contains("the work does not fit into the time there is. Nothing was written.\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains("found ", ran.Output, StringComparison.Ordinal);
        Assert.False(File.Exists(workshop.PathOf("out/calendar.json")));
    }

    [Fact]
    public async Task A_calendar_begins_from_the_one_before()
    {
        using var workshop = new Workshop();
        var before = workshop.PathOf("calendar.json");
        string[] arguments = ["calendar", example.Plan, "--workshop", example.Shed, "--out", workshop.Folder, "--start", "2027-01-05", "--seconds", "1", "--repeatable"];
        await Program.RunAsync(arguments);

        var ran = await Program.RunAsync([.. arguments, "--before", before]);

        Assert.Equal(0, ran.Code);
        Assert.Matches("\n  moved to another evening: [0-9]+ tasks?, ", ran.Output);
    }

    [Theory]
    [InlineData("--start: found tomorrow, expected a day such as 2027-05-04", "--start", "tomorrow")]
    [InlineData("above 0", "--seconds", "0")]
    [InlineData("expected a calendar.json", "--before", "none.json")]
    [InlineData("expected a workshop folder", "--workshop", "no-such-folder")]
    public async Task What_it_cannot_read_it_says(string expected, params string[] arguments)
    {
        using var workshop = new Workshop();

        var ran = await Program.RunAsync(["calendar", example.Plan, "--out", workshop.Folder, .. arguments]);

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains(expected, ran.Error, StringComparison.Ordinal);
        ran.IsPlain();
    }

    [Fact]
    public async Task A_file_that_is_no_calendar_says_where()
    {
        using var workshop = new Workshop();
        await File.WriteAllTextAsync(workshop.PathOf("before.json"), "{ \"version\": 1,\n  \"fingerprint\": 3 }");

        var ran = await Program.RunAsync("calendar", example.Plan, "--out", workshop.Folder, "--before", workshop.PathOf("before.json"));

        Assert.Equal(2, ran.Code);
        Assert.Contains("before.json, line 2", ran.Error, StringComparison.Ordinal);
        Assert.Contains("expected a calendar.json as scrapwright calendar writes it", ran.Error, StringComparison.Ordinal);
    }
}
