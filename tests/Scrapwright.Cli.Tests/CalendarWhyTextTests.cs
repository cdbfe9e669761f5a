using Scrapwright.Cli.Output;
using Scrapwright.Core.Calendar;

namespace Scrapwright.Cli.Tests;

public sealed class CalendarWhyTextTests
{
    [Fact]
    public void Ways_out_come_as_questions_and_what_helps_with_its_gain()
    {
        var why = new CalendarWhy
        {
            Alternatives =
            [
                new() { Kind = OtherwiseKind.Finish, Question = "Would shellac do instead of oil?", InTime = ["tray", "box"], LateThen = [] },
                new() { Kind = OtherwiseKind.LeaveOut, Question = "Shall the stool be left out (priority 3)?", LeftOut = "stool", LeftOutPriority = 3, InTime = ["tray"], LateThen = ["box"] },
            ],
            HoldUps =
            [
                new() { Kind = OtherwiseKind.Helper, What = "somebody who helps", SoonerDays = 1, InTime = ["tray"], HoursLessLate = 30, Levels = [new(ScheduleLevelKind.AllReady, 1500, 1440), new(ScheduleLevelKind.Lateness, 2, 0, 1)] },
            ],
            NoGain = ["4 more clamps", "every Sunday"],
            NotTried = ["another glue"],
            LongerSearchHelps = true,
        };

        Assert.Equal(
            [
                "A longer search finds a better calendar: raise --seconds. What follows is counted from that one.",
                "What could be done:",
                "  Would shellac do instead of oil? Then tray, box are in time.",
                "  Shall the stool be left out (priority 3)? Then tray is in time; late then: box.",
                "What holds it up:",
                "  with somebody who helps: tray in time; 30 hours less late in all; the last gift 1 day sooner; all ready after 1 d 1 h 0 min, late, priority 1: 2 hours",
                "Tried without gain: 4 more clamps; every Sunday.",
                "No time to try: another glue.",
            ],
            CalendarWhyText.Lines(why));
        Assert.Equal("Nothing that was tried makes it sooner by a day.", CalendarWhyText.Lines(why with { HoldUps = [], Alternatives = [], LongerSearchHelps = false }).First());
    }
}
