using System.Collections.Immutable;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;

namespace Scrapwright.Storage.Tests;

public sealed class YearsTests : IDisposable
{
    private static readonly DateOnly Day = new(2027, 6, 19);

    private static readonly Occasion OpenDay = new() { Name = "Open day", Date = Day, Repeats = new Repetition.OnWeekday(6, 3, DayOfWeek.Saturday), Note = "thank-yous" };

    private static readonly GivenGift Former = new()
    {
        Date = new(2026, 6, 20),
        Occasion = "Open day",
        Recipient = "gate keeper",
        Circle = "helpers",
        Design = "old-box",
        Options = ImmutableSortedDictionary<string, string>.Empty.Add("lid", "yes"),
        Note = "liked it",
    };

    private readonly TemporaryWorkshop workshop = new();

    public void Dispose() => workshop.Dispose();

    private Task<WorkshopStore> OpenAsync(DateOnly? today = null) => WorkshopStore.OpenAsync(workshop.Folder, new Noon(today ?? Day));

    private static Gift Gift(string label, string occasion = "open DAY") => TemporaryWorkshop.Gift(label) with { Recipient = label, Occasion = occasion };

    private static async Task<StoredOccasion> AddAsync(WorkshopStore store, Occasion occasion) =>
        Assert.Single(Assert.IsType<AddOutcome<StoredOccasion>.Added>(await store.AddOccasionAsync(occasion)).Rows);

    [Fact]
    public async Task Occasions_and_what_was_given_come_back_as_they_were()
    {
        var store = await OpenAsync();
        await AddAsync(store, OpenDay);
        await AddAsync(store, OpenDay with { Name = "Leap day", Repeats = new Repetition.OnDate(2, 29) });
        await store.AddGivenAsync(Former);

        var years = await (await OpenAsync()).GetYearsAsync();

        Assert.Equal([OpenDay, OpenDay with { Name = "Leap day", Repeats = new Repetition.OnDate(2, 29) }], years.Occasions);
        Assert.Equal(Former with { Options = years.Given[0].Options }, Assert.Single(years.Given));
        Assert.Equal(Former.Options, years.Given[0].Options);
    }

    [Fact]
    public async Task Names_are_kept_apart_and_a_removed_occasion_comes_back()
    {
        var store = await OpenAsync();
        var (one, other) = (await AddAsync(store, OpenDay), await AddAsync(store, OpenDay with { Name = "Fair" }));

        Assert.IsType<AddOutcome<StoredOccasion>.LabelsTaken>(await store.AddOccasionAsync(OpenDay with { Name = "OPEN day" }));
        Assert.Equal(new ChangeOutcome<StoredOccasion>.LabelTaken("open day"), await store.UpdateOccasionAsync(other.Id, OpenDay with { Name = "open day" }));
        Assert.IsType<RemoveOccasionOutcome.Removed>(await store.RemoveOccasionAsync(one.Id));
        Assert.IsType<RemoveOccasionOutcome.Missing>(await store.RemoveOccasionAsync(one.Id));
        Assert.IsType<ChangeOutcome<StoredOccasion>.Changed>(await store.RestoreOccasionAsync(one.Id));

        Assert.Equal(["Open day", "Fair"], (await store.ListOccasionsAsync()).Select(o => o.Occasion.Name));
    }

    [Fact]
    public async Task An_occasion_with_gifts_is_not_removed()
    {
        var store = await OpenAsync();
        var row = await AddAsync(store, OpenDay);
        await store.AddGiftsAsync([Gift("a"), Gift("b", "")]);

        Assert.Equal(["a"], Assert.IsType<RemoveOccasionOutcome.HasGifts>(await store.RemoveOccasionAsync(row.Id)).Labels);
    }

    [Fact]
    public async Task Under_a_new_name_gifts_and_what_was_given_go_with_it()
    {
        var store = await OpenAsync();
        var row = await AddAsync(store, OpenDay);
        await store.AddGiftsAsync([Gift("a"), Gift("b", "")]);
        await store.AddGivenAsync(Former);

        await store.UpdateOccasionAsync(row.Id, OpenDay with { Name = "Summer day" });

        Assert.Equal(["Summer day", ""], (await store.ListGiftsAsync()).Select(g => g.Gift.Occasion));
        Assert.Equal("Summer day", Assert.Single(await store.ListGivenAsync()).Given.Occasion);
    }

    [Fact]
    public async Task What_was_given_is_corrected_removed_and_restored()
    {
        var store = await OpenAsync();
        var row = await store.AddGivenAsync(Former);

        await store.UpdateGivenAsync(row.Id, Former with { Recipient = " pond helper " });
        Assert.True(await store.RemoveGivenAsync(row.Id));
        Assert.False(await store.RemoveGivenAsync(row.Id));
        Assert.Empty(await store.ListGivenAsync());
        Assert.IsType<ChangeOutcome<StoredGiven>.Changed>(await store.RestoreGivenAsync(row.Id));
        Assert.IsType<ChangeOutcome<StoredGiven>.Missing>(await store.UpdateGivenAsync(row.Id + 1, Former));

        Assert.Equal((row.Id, "pond helper"), (Assert.Single(await store.ListGivenAsync()).Id, (await store.ListGivenAsync())[0].Given.Recipient));
    }

    [Fact]
    public async Task A_request_has_the_date_of_every_gift_and_the_list_does_not()
    {
        var store = await OpenAsync();
        await AddAsync(store, OpenDay);
        await store.AddGiftsAsync([Gift("a"), Gift("b") with { Due = new(2027, 5, 1) }, Gift("c", "")]);

        Assert.Equal([Day, new(2027, 5, 1), null], (await store.GetRequestAsync()).Gifts.Select(g => g.Due));
        Assert.Equal([null, new(2027, 5, 1), null], (await store.GetListedAsync()).Gifts.Select(g => g.Due));
        Assert.Equal(new DateOnly(2028, 6, 17), (await (await OpenAsync(Day.AddDays(60))).GetRequestAsync()).Gifts[0].Due);
    }

    [Fact]
    public async Task Gifts_that_are_given_leave_the_list_and_all_can_be_taken_back()
    {
        var store = await OpenAsync();
        await AddAsync(store, OpenDay);
        await store.AddGiftsAsync([Gift("a"), Gift("b"), Gift("c", "")]);
        var (list, years) = (await store.ListGiftsAsync(), await store.GetYearsAsync());

        var done = await store.HandOverAsync("open day", null, ["B"]);

        Assert.IsType<HandOver.Done>(done.Outcome);
        Assert.Equal(["b", "c"], (await store.ListGiftsAsync()).Select(g => g.Gift.Label));
        Assert.Equal(("a", Day), (Assert.Single(await store.ListGivenAsync()).Given.Recipient, (await store.ListGivenAsync())[0].Given.Date));
        Assert.Equal(new DateOnly(2028, 6, 17), (await store.ListOccasionsAsync())[0].Occasion.Date);

        Assert.Equal("", await store.TakeBackAsync(done.Gifts, [.. done.Given.Select(g => g.Id)], "Open day", done.Before));

        Assert.Equal(list.Select(g => (g.Id, g.Gift.Label)), (await store.ListGiftsAsync()).Select(g => (g.Id, g.Gift.Label)));
        var after = await store.GetYearsAsync();
        Assert.Equal((years.Occasions[0], 0), (after.Occasions[0], after.Given.Length));
    }

    [Fact]
    public async Task A_hand_over_is_not_taken_back_by_half()
    {
        var store = await OpenAsync();
        await AddAsync(store, OpenDay);
        await store.AddGiftsAsync([Gift("a"), Gift("b")]);
        var done = await store.HandOverAsync("Open day", null, []);
        await store.AddGiftsAsync([Gift("B", "")]);

        Assert.Equal("b", await store.TakeBackAsync(done.Gifts, [.. done.Given.Select(g => g.Id)], "Open day", done.Before));

        Assert.Equal(["B"], (await store.ListGiftsAsync()).Select(g => g.Gift.Label));
        Assert.Equal(2, (await store.ListGivenAsync()).Length);
    }

    [Fact]
    public async Task What_cannot_be_given_changes_nothing()
    {
        var store = await OpenAsync(Day.AddDays(-1));
        await AddAsync(store, OpenDay);
        await store.AddGiftsAsync([Gift("a")]);

        Assert.Equal(new HandOver.TooEarly(Day), (await store.HandOverAsync("Open day", null, [])).Outcome);

        Assert.Single(await store.ListGiftsAsync());
        Assert.Empty(await store.ListGivenAsync());
    }

    [Fact]
    public async Task They_are_replaced_and_emptied_with_the_workshop()
    {
        var store = await OpenAsync();
        await AddAsync(store, OpenDay);
        await store.AddGivenAsync(Former);

        await store.ReplaceAsync(new WorkshopContents { Gifts = [Gift("a")] });
        Assert.False((await store.GetYearsAsync()).AreNone);
        await store.ReplaceAsync(new WorkshopContents { Occasions = [OpenDay with { Name = "Fair" }], Given = [Former, Former] });
        var years = await store.GetYearsAsync();
        Assert.Equal(("Fair", 2), (Assert.Single(years.Occasions).Name, years.Given.Length));
        Assert.IsType<ReplaceOutcome.NamesTaken>(await store.ReplaceAsync(new WorkshopContents { Occasions = [OpenDay, OpenDay with { Name = "OPEN DAY" }] }));
        Assert.Equal(years.Occasions, (await store.GetYearsAsync()).Occasions);

        await store.ClearAsync();
        Assert.True((await store.GetYearsAsync()).AreNone);
        Assert.Equal(PlanJson.Fingerprint(new PlanRequest()), PlanJson.Fingerprint(await store.GetListedAsync()));
    }

    private sealed class Noon(DateOnly day) : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => new(day.ToDateTime(new TimeOnly(12, 0)), TimeSpan.Zero);
    }
}
