using Scrapwright.Core.Calendar;
using Scrapwright.Core.Shops;

namespace Scrapwright.Storage.Tests;

public sealed class CalendarTests : IDisposable
{
    private static readonly DateTimeOffset Evening = new(2027, 5, 4, 18, 30, 0, TimeSpan.FromHours(1));

    private readonly TemporaryWorkshop workshop = new();

    [Fact]
    public async Task Calendars_are_kept_latest_first_with_the_marks_they_were_made_with()
    {
        var store = await workshop.OpenAsync();
        Assert.Null(await store.FindLatestCalendarAsync());

        await store.AddCalendarAsync(Calendar("one"), new());
        await store.AddCalendarAsync(Calendar("two"), new() { Done = [new("sand/elm", Evening)] });

        var kept = await (await workshop.OpenAsync()).GetCalendarsAsync();
        Assert.Equal(["two", "one"], kept.Select(c => CalendarJson.Read(c.Json).Fingerprint));
        Assert.Equal(new DoneTask("sand/elm", Evening), Assert.Single(kept[0].Marks.Done));
        Assert.True(kept[1].Marks.AreNone);
        Assert.Equal(kept[0].Id, (await store.FindLatestCalendarAsync())!.Id);
    }

    [Fact]
    public async Task Old_calendars_go()
    {
        var store = await workshop.OpenAsync();
        for (var i = 0; i < WorkshopStore.KeptCalendars + 3; i++) await store.AddCalendarAsync(Calendar($"{i}"), new());

        var kept = await store.GetCalendarsAsync();

        Assert.Equal(WorkshopStore.KeptCalendars, kept.Length);
        Assert.Equal("3", CalendarJson.Read(kept[^1].Json).Fingerprint);
    }

    [Fact]
    public async Task Marks_are_kept_beside_the_shop_and_taken_off_again()
    {
        var store = await workshop.OpenAsync();
        Assert.True((await store.GetMarksAsync()).AreNone);
        await store.PutHoursAsync(new WorkHours { Makers = 3 });

        await store.PutMarksAsync(new() { Done = [new("rip/elm", Evening)], Pinned = [new("glue-up/G1", Evening)] });

        store = await workshop.OpenAsync();
        var marks = await store.GetMarksAsync();
        Assert.Equal(("rip/elm", "glue-up/G1", Evening), (marks.Done.Single().Task, marks.Pinned.Single().Task, marks.Pinned.Single().Start));
        Assert.Equal(3, (await store.GetHoursAsync()).Makers);
        await store.PutMarksAsync(new());
        Assert.True((await store.GetMarksAsync()).AreNone);
    }

    [Fact]
    public async Task An_emptied_workshop_has_neither_calendar_nor_marks()
    {
        var store = await workshop.OpenAsync();
        await store.AddCalendarAsync(Calendar("one"), new());
        await store.PutMarksAsync(new() { Done = [new("rip/elm", Evening)] });

        await store.ClearAsync();

        Assert.Null(await store.FindLatestCalendarAsync());
        Assert.True((await store.GetMarksAsync()).AreNone);
    }

    public void Dispose() => workshop.Dispose();

    private static WorkCalendar Calendar(string fingerprint) => new()
    {
        Fingerprint = fingerprint,
        Start = Evening,
        TimeZone = "Europe/Dublin",
        Hours = new(),
        Problem = new() { HorizonMinutes = 1, Resources = [], Tasks = [] },
        Schedule = new() { Tasks = [] },
        Tasks = [],
        Settings = [],
        Gifts = [],
        Evenings = [],
    };
}
