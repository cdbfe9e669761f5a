using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Scrapwright.Core.Shops;

namespace Scrapwright.Storage.Tests;

public sealed class MigrationTests : IDisposable
{
    private readonly TemporaryWorkshop workshop = new();

    [Fact]
    public async Task Gifts_from_before_they_had_air_and_finish_keep_everything_and_take_the_shops()
    {
        await MakeAsOfAsync("FirstTables");
        workshop.Scalar(
            """
            INSERT INTO gifts (Id, Position, IsDeleted, Label, Recipient, Circle, Design, OptionsJson, Due, Priority) VALUES
            (3, 1, 0, 'Ash', 'neighbour', 'lane', 'striped-squares', '{"count":"6"}', '2027-06-21', 1),
            (4, 2, 1, 'Elm', '', '', 'rod-stand', '{}', NULL, 2);
            INSERT INTO shop (Id, Name, Json) VALUES (1, 'Garden shed', '{"unit":"millimetre","clamps":[{"name":"bar","reach":"600 mm","count":4}]}');
            """);

        var store = await workshop.OpenAsync();

        var kept = Assert.Single(await store.ListGiftsAsync());
        Assert.Equal((3L, "Ash", "neighbour", "lane", new DateOnly(2027, 6, 21), 1), (kept.Id, kept.Gift.Label, kept.Gift.Recipient, kept.Gift.Circle, kept.Gift.Due!.Value, kept.Gift.Priority));
        Assert.Equal("6", kept.Gift.Options["count"]);
        Assert.Equal(("", ""), (kept.Gift.Climate, kept.Gift.Finish));
        Assert.IsType<ChangeOutcome<StoredGift>.Changed>(await store.RestoreGiftAsync(4));
        var shop = await store.GetShopAsync();
        Assert.Equal((new Shop().Climate, 4, new ClampKind("", default, 0).ForceNewtons), (shop.Climate, shop.Clamps[0].Count, shop.Clamps[0].ForceNewtons));
    }

    [Fact]
    public async Task A_gift_changed_after_the_migration_keeps_its_air_and_finish()
    {
        await MakeAsOfAsync("FirstTables");
        workshop.Scalar("INSERT INTO gifts (Id, Position, IsDeleted, Label, Recipient, Circle, Design, OptionsJson, Due, Priority) VALUES (3, 1, 0, 'Ash', '', '', 'striped-squares', '{}', NULL, 2)");
        var store = await workshop.OpenAsync();

        await store.UpdateGiftAsync(3, TemporaryWorkshop.Gift("Ash") with { Climate = "heated-cold", Finish = "hard-wax" });

        var kept = Assert.Single(await (await workshop.OpenAsync()).ListGiftsAsync()).Gift;
        Assert.Equal(("heated-cold", "hard-wax"), (kept.Climate, kept.Finish));
    }

    [Fact]
    public async Task A_workshop_from_before_there_were_choices_has_none_and_keeps_new_ones()
    {
        await MakeAsOfAsync("GiftAirAndFinish");
        workshop.Scalar("INSERT INTO shop (Id, Name, Json) VALUES (1, 'Garden shed', NULL)");
        var store = await workshop.OpenAsync();

        Assert.True((await store.GetChoicesAsync()).AreNone);
        await store.PutChoicesAsync(new() { Saved = ["W1"], Pins = [new("W2", "Ash", "square")] });

        var request = await (await workshop.OpenAsync()).GetRequestAsync();
        Assert.Equal("Garden shed", request.Workshop);
        Assert.Equal(["W1"], request.Choices.Saved);
        Assert.Equal("Ash", Assert.Single(request.Choices.Pins).Gift);
    }

    [Fact]
    public async Task A_workshop_from_before_there_were_hours_has_the_usual_ones_and_keeps_new_ones()
    {
        await MakeAsOfAsync("MakerChoices");
        workshop.Scalar("INSERT INTO shop (Id, Name, Json, Choices) VALUES (1, 'Garden shed', NULL, '{\"saved\":[\"W1\"]}')");
        var store = await workshop.OpenAsync();

        Assert.Equal(new WorkHours().Week.Length, (await store.GetHoursAsync()).Week.Length);
        await store.PutHoursAsync(new WorkHours { Makers = 4 });

        store = await workshop.OpenAsync();
        Assert.Equal(4, (await store.GetHoursAsync()).Makers);
        Assert.Equal(["W1"], (await store.GetChoicesAsync()).Saved);
    }

    [Fact]
    public async Task A_workshop_from_before_there_were_calendars_has_none_and_keeps_new_ones()
    {
        await MakeAsOfAsync("WorkHours");
        workshop.Scalar("INSERT INTO shop (Id, Name, Json, Choices, Hours) VALUES (1, 'Garden shed', NULL, NULL, '{\"makers\":4}')");
        var store = await workshop.OpenAsync();

        Assert.Null(await store.FindLatestCalendarAsync());
        Assert.True((await store.GetMarksAsync()).AreNone);
        await store.PutMarksAsync(new() { Done = [new("sand/elm", new DateTimeOffset(2027, 5, 4, 18, 30, 0, TimeSpan.Zero))] });

        store = await workshop.OpenAsync();
        Assert.Equal("sand/elm", (await store.GetMarksAsync()).Done.Single().Task);
        Assert.Equal(4, (await store.GetHoursAsync()).Makers);
    }

    [Fact]
    public async Task Gifts_from_before_there_were_occasions_are_for_none_and_keep_their_dates()
    {
        await MakeAsOfAsync("Calendars");
        workshop.Scalar("INSERT INTO gifts (Id, Position, IsDeleted, Label, Recipient, Circle, Design, OptionsJson, Due, Priority, Climate, Finish) VALUES (3, 1, 0, 'Ash', '', '', 'striped-squares', '{}', '2027-06-21', 2, '', '')");
        var store = await workshop.OpenAsync();

        var gift = Assert.Single(await store.ListGiftsAsync()).Gift;
        Assert.Equal(("", new DateOnly(2027, 6, 21)), (gift.Occasion, gift.Due));
        Assert.True((await store.GetYearsAsync()).AreNone);
        await store.AddOccasionAsync(new() { Name = "Fair", Date = new(2027, 9, 4) });
        await store.UpdateGiftAsync(3, gift with { Due = null, Occasion = "Fair" });

        Assert.Equal(new DateOnly(2027, 9, 4), (await (await workshop.OpenAsync()).GetRequestAsync()).Gifts[0].Due);
    }

    [Fact]
    public async Task The_last_migration_can_be_taken_back()
    {
        await workshop.OpenAsync();

        await MakeAsOfAsync("FirstTables");

        Assert.Equal(0L, workshop.Scalar("SELECT COUNT(*) FROM pragma_table_info('gifts') WHERE name IN ('Climate', 'Finish')"));
    }

    public void Dispose() => workshop.Dispose();

    private async Task MakeAsOfAsync(string migration)
    {
        var options = new DbContextOptionsBuilder<WorkshopContext>().UseSqlite($"Data Source={workshop.DatabasePath};Pooling=False").Options;
        await using var context = new WorkshopContext(options);
        await context.GetService<IMigrator>().MigrateAsync(migration);
    }
}
