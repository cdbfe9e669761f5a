using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Scrapwright.Client.Api;
using Scrapwright.Client.Calendar;
using Scrapwright.Client.Shell;
using Scrapwright.Client.Shops;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Tests.Calendar;
using Scrapwright.Core.Tests.Plans;

namespace Scrapwright.Client.Tests.Calendar;

public sealed class TookEntryTests : ScreenContext
{
    private static readonly WorkCalendar Made = CalendarBench.Calendar(Assert.IsType<CalendarMaking.Made>(CalendarProblem.Make(new CalendarRequest
    {
        Plan = ExamplePlans.Squares,
        Hours = new WorkHours { TimeZone = "Europe/Dublin" },
        HomeZone = TimeZoneInfo.Utc,
        Start = DateTimeOffset.Parse("2027-05-03T12:00Z"),
    })).Problem);

    private static readonly WorkLine Line = WorkLines.Of(Made, Made.Evenings[0]).Where(l => !l.IsSetUp).MaxBy(l => l.Tasks.Length)!;

    [Fact]
    public void What_a_line_took_is_kept_as_one_reading_beside_the_usual_minutes_of_its_tasks()
    {
        var entry = Render<TookEntry>(p => p.Add(e => e.Line, Line));

        entry.WaitForElement(".took-minutes").Input("25");
        entry.Find("form").Submit();

        entry.WaitForAssertion(() => Assert.Single(Far.Times));
        var reading = Far.Times[0].Reading;
        Assert.Equal((Line.Tasks[0].Task.Operation, Line.Tasks.Sum(t => t.Task.UsualMinutes!.Value), 25, Line.Title), (reading.Operation, reading.PlannedMinutes, reading.TookMinutes, reading.Note));
        Assert.Equal(Line.Tasks[0].Task.PaceSetting, reading.Setting);
        entry.WaitForAssertion(() => Assert.StartsWith("Took 25 min, usually ", entry.Find("p.took").TextContent, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("soon")]
    [InlineData("0")]
    [InlineData("12.5")]
    [InlineData("1441")]
    public void What_are_no_minutes_is_told_and_not_kept(string text)
    {
        var entry = Render<TookEntry>(p => p.Add(e => e.Line, Line));

        entry.WaitForElement(".took-minutes").Input(text);
        entry.Find("form").Submit();

        entry.WaitForAssertion(() => Assert.Equal($"Found “{text}”, expected whole minutes from 1 to 1440.", entry.Find(".problem").TextContent));
        Assert.Empty(Far.Times);
    }

    [Fact]
    public void A_slip_is_changed()
    {
        Far.Times.Add(new(7, new TimeReading(new(2027, 5, 4), Line.Tasks[0].Task.Operation, 10, 250) { Note = Line.Title }));
        var entry = Render<TookEntry>(p => p.Add(e => e.Line, Line));

        entry.WaitForElement("p.took button").Click();

        entry.WaitForAssertion(() => Assert.Equal("250", entry.Find(".took-minutes").GetAttribute("value")));
        Assert.Empty(Far.Times);
    }

    [Fact]
    public void The_shop_page_says_the_paces_and_removes_readings_which_undo_brings_back()
    {
        for (var i = 1; i <= 6; i++) Far.Times.Add(new(i, new TimeReading(new(2027, 5, i), Operation.EdgeJoint, 10, 15)));
        var times = Render<MeasuredTimes>();

        // 1.5^(6/9) = 1.31.
        times.WaitForAssertion(() => Assert.Equal("Joint edges takes you 1.31 times as long, from 6 readings", times.Find(".paces li").TextContent));
        times.FindAll(".time-list button")[0].Click();

        times.WaitForAssertion(() => Assert.EndsWith("from 5 readings", times.Find(".paces li").TextContent, StringComparison.Ordinal));
        Assert.DoesNotContain(Far.Times, t => t.Id == 6);
        times.InvokeAsync(() => Services.GetRequiredService<Undoing>().UndoLatestAsync());
        times.WaitForAssertion(() => Assert.EndsWith("from 6 readings", times.Find(".paces li").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public void Without_readings_the_shop_page_says_so()
    {
        var times = Render<MeasuredTimes>();

        times.WaitForAssertion(() => Assert.Contains("Nothing was timed yet", times.Find(".empty").TextContent));
    }
}
