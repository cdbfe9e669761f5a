using Scrapwright.Core.Calendar;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Sheets;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Tests.Calendar;
using Scrapwright.Core.Tests.Plans;

namespace Scrapwright.Core.Tests.Sheets;

public sealed class WeekSheetsTests
{
    private static readonly Plan Plan = ExamplePlans.Squares;

    private static readonly WorkCalendar Calendar = CalendarBench.Calendar(Assert.IsType<CalendarMaking.Made>(CalendarProblem.Make(new CalendarRequest
    {
        Plan = Plan,
        Hours = new WorkHours { TimeZone = "Europe/Dublin" },
        HomeZone = TimeZoneInfo.Utc,
        Start = DateTimeOffset.Parse("2027-05-03T12:00Z", System.Globalization.CultureInfo.InvariantCulture),
    })).Problem);

    [Fact]
    public void They_stay_inside_and_keep_their_texts_apart()
    {
        foreach (var sheet in new[] { PaperSize.A4, PaperSize.Letter }.SelectMany(paper => WeekSheets.For(Calendar, Plan, paper)))
        {
            SheetRules.AssertInsideMargins(sheet);
            SheetRules.AssertNoTextOverlaps(sheet.Title, sheet.AllMarks);
        }
    }

    [Fact]
    public void Every_line_of_work_stands_on_them_with_its_time_and_a_box_to_tick()
    {
        var sheets = WeekSheets.For(Calendar, Plan, PaperSize.A4);
        var texts = sheets.SelectMany(s => s.AllMarks).OfType<Mark.Text>().Select(t => t.Letters).ToArray();
        // A box to tick is a square of 4.5 mm.
        var boxes = sheets.SelectMany(s => s.AllMarks).OfType<Mark.Rectangle>().Count(r => Math.Abs(r.Bounds.WidthMm - r.Bounds.HeightMm) < 1e-6 && r.Bounds.WidthMm < 6);

        WorkLine[] lines = [.. Calendar.Evenings.SelectMany(e => WorkLines.Of(Calendar, e)).Where(l => !l.IsSetUp)];
        Assert.Equal(lines.Length, boxes);
        Assert.All(lines, l => Assert.Contains($"{l.Start:HH:mm}", texts));
        Assert.All(lines, l => Assert.Contains($"{l.Tasks.Sum(t => t.Task.Minutes)}\u00A0min", texts));
        Assert.All(Calendar.Evenings, e => Assert.Contains(texts, t => t.StartsWith($"{e.Start:dddd d MMMM}, ", StringComparison.Ordinal)));
        Assert.Contains(texts, t => t.StartsWith("Leave alone: Coat 1 of 3", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_to_be_bought_stands_on_the_first_sheet_with_its_day()
    {
        var drilled = Calendar.Tasks[0] with { Task = Calendar.Tasks[0].Task with { Operation = Operation.Drill, Gifts = ["Elm"] } };
        var calendar = Calendar with { Tasks = [drilled, .. Calendar.Tasks[1..]], Shopping = [new("drill bit", 2, Length.FromInches(7, 16), Length.Zero, "Elm"), new("dowel", 1, Length.Zero, Length.FromInches(36), "Oak")] };

        var sheets = WeekSheets.For(calendar, Plan, PaperSize.A4);

        var texts = sheets[0].AllMarks.OfType<Mark.Text>().Select(t => t.Letters).ToArray();
        Assert.Contains(texts, t => t.StartsWith("2 × drill bit", StringComparison.Ordinal) && t.EndsWith($"before {drilled.Start:dddd d MMMM}", StringComparison.Ordinal));
        Assert.DoesNotContain(texts, t => t.Contains("dowel", StringComparison.Ordinal));
        Assert.DoesNotContain(sheets[1..].SelectMany(s => s.AllMarks).OfType<Mark.Text>(), t => t.Letters == "To buy");
    }

    // 3 May 2027 is a Monday (ISO 8601, from memory).
    [Fact]
    public void Weeks_run_from_Monday_to_Sunday()
    {
        var titles = WeekSheets.For(Calendar, Plan, PaperSize.A4).Select(s => s.Title).Where(t => !t.EndsWith("(continued)", StringComparison.Ordinal)).ToArray();

        Assert.Equal("Week of 3 May 2027", titles[0]);
        Assert.Equal(Calendar.Evenings.Select(e => System.Globalization.ISOWeek.GetWeekOfYear(e.Start.DateTime)).Distinct().Count(), titles.Length);
    }

    [Fact]
    public void When_nothing_is_left_there_is_no_sheet() => Assert.Empty(WeekSheets.For(Calendar with { Evenings = [], Tasks = [] }, Plan, PaperSize.A4));
}
