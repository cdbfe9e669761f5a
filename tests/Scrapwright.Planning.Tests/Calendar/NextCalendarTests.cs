using Scrapwright.Core.Calendar;
using Scrapwright.Planning.Tests.Calendar.Advice;

namespace Scrapwright.Planning.Tests.Calendar;

/// <summary>A calendar made after some evenings, beside the one before.</summary>
public sealed class NextCalendarTests(ExampleCalendars example) : IClassFixture<ExampleCalendars>
{
    [Fact]
    public async Task After_two_evenings_done_on_time_all_others_stay_as_they_are()
    {
        var before = example.Early;

        var next = await ExampleCalendars.CalendarAsync(After(before, 2));

        Assert.Equal(before.Tasks.Length, next.Tasks.Length + before.Evenings[..2].Sum(e => e.Tasks.Length));
        Assert.Equal(0, Level(next, ScheduleLevelKind.Moved).Value);
        Assert.Equal(before.Evenings[2..].Select(e => e.Start), next.Evenings.Select(e => e.Start));
        Assert.All(next.Tasks, t => Assert.Equal(EveningOf(before, t.Task.Id), EveningOf(next, t.Task.Id)));
        Assert.Equal(0, Level(next, ScheduleLevelKind.MoreSetUps).Value);
    }

    [Fact]
    public async Task What_was_not_done_moves_and_little_else()
    {
        var before = example.Early;
        var request = After(before, 2);
        var missed = before.Evenings[1].Tasks[^1];

        var next = await ExampleCalendars.CalendarAsync(request with { Done = request.Done.RemoveAll(d => d.Task == missed) });

        Assert.Contains(next.Tasks, t => t.Task.Id == missed);
        Assert.InRange(Level(next, ScheduleLevelKind.Moved).Value, 0, before.Tasks.Length / 4);
        Assert.DoesNotContain(next.Gifts, g => g.IsLate);
    }

    [Fact]
    public async Task New_hours_that_make_all_ready_sooner_are_used()
    {
        var hours = example.EarlyRequest.Hours;
        var before = await ExampleCalendars.CalendarAsync(example.EarlyRequest with { Hours = hours with { Week = hours.Week[..1] } });

        var alone = example.Early;
        var next = await ExampleCalendars.CalendarAsync(example.EarlyRequest with { Before = before });

        // Two days are what is noticed, so as much may be missing.
        Assert.True(Ready(alone) < Ready(before) - TimeSpan.FromDays(3), $"{Ready(alone)} and {Ready(before)}");
        Assert.True(Ready(next) <= Ready(alone) + TimeSpan.FromDays(2), $"{Ready(next)} and {Ready(alone)}");
    }

    private CalendarRequest After(WorkCalendar before, int evenings) => example.EarlyRequest with
    {
        Start = before.Evenings[evenings - 1].End.AddHours(12),
        Done = [.. before.Evenings[..evenings].SelectMany(e => e.Tasks).Select(id => new DoneTask(id, before.Tasks.Single(t => t.Task.Id == id).End))],
        Before = before,
    };

    private static ScheduleLevel Level(WorkCalendar calendar, ScheduleLevelKind kind) => calendar.Schedule.Levels.Single(l => l.Kind == kind);

    private static DateTimeOffset EveningOf(WorkCalendar calendar, string task) => calendar.Evenings.Single(e => e.Tasks.Contains(task)).Start;

    private static DateTimeOffset? Ready(WorkCalendar calendar) => calendar.Gifts.Max(g => g.ReadyAt);
}
