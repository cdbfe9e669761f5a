using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Storage.Tests;

public sealed class WorkshopTests : IDisposable
{
    private readonly TemporaryWorkshop workshop = new();

    [Fact]
    public async Task A_gift_comes_back_as_it_was()
    {
        var store = await workshop.OpenAsync();
        var gift = TemporaryWorkshop.Gift("Ash") with
        {
            Recipient = "neighbour",
            Circle = "lane",
            Due = new DateOnly(2027, 6, 21),
            Priority = 1,
            Climate = "heated-cold",
            Finish = "hard-wax",
            Options = ImmutableSortedDictionary<string, string>.Empty.Add("count", "6").Add("size", "4 in"),
        };

        await store.AddGiftsAsync([gift]);

        var kept = Assert.Single(await store.ListGiftsAsync()).Gift;
        Assert.Equal(gift with { Options = kept.Options }, kept);
        Assert.Equal(gift.Options, kept.Options);
    }

    [Fact]
    public async Task Gifts_keep_their_labels_apart_and_can_be_restored()
    {
        var store = await workshop.OpenAsync();
        await store.AddGiftsAsync([TemporaryWorkshop.Gift("a"), TemporaryWorkshop.Gift("b")]);
        var rows = await store.ListGiftsAsync();

        Assert.IsType<AddOutcome<StoredGift>.LabelsTaken>(await store.AddGiftsAsync([TemporaryWorkshop.Gift("A")]));
        Assert.Equal(new ChangeOutcome<StoredGift>.LabelTaken("B"), await store.UpdateGiftAsync(rows[0].Id, TemporaryWorkshop.Gift("B")));
        Assert.True(await store.DeleteGiftAsync(rows[0].Id));
        Assert.IsType<ChangeOutcome<StoredGift>.Changed>(await store.RestoreGiftAsync(rows[0].Id));

        Assert.Equal(["a", "b"], (await store.ListGiftsAsync()).Select(r => r.Gift.Label));
    }

    [Fact]
    public async Task A_shop_comes_back_as_it_was_and_a_name_beside_it()
    {
        var store = await workshop.OpenAsync();
        var shop = new Shop { Unit = LengthUnit.Millimetre, KeepLength = Length.FromMillimetres(100), TableSaw = new TableSaw { Kerf = Length.FromMicrometres(2600) }, MinimumContrast = 9.25 };

        await store.PutNameAsync("Garden shed");
        await store.PutShopAsync(shop);

        var kept = (await store.GetRequestAsync()).Shop;
        Assert.Equal("Garden shed", (await store.GetRequestAsync()).Workshop);
        Assert.Equal(PlanJson.Fingerprint(new PlanRequest { Shop = shop }), PlanJson.Fingerprint(new PlanRequest { Shop = kept }));
        Assert.Equal(Length.FromMicrometres(2600), kept.TableSaw.Kerf);
    }

    [Fact]
    public async Task Hours_come_back_as_they_were_and_change_nothing_else()
    {
        var store = await workshop.OpenAsync();
        await store.PutShopAsync(new Shop { Denominator = 64 });
        var before = PlanJson.Fingerprint(await store.GetRequestAsync());
        Assert.Equal(new WorkHours().QuietFrom, (await store.GetHoursAsync()).QuietFrom);

        await store.PutHoursAsync(new WorkHours
        {
            TimeZone = "Europe/Dublin",
            Week = [new(DayOfWeek.Sunday, [new(new(9, 15), TimeOnly.MinValue)])],
            Exceptions = [new(new(2027, 5, 1), new(2027, 5, 2), [], "away")],
            QuietFrom = null,
            Makers = 2,
        });

        var kept = await (await workshop.OpenAsync()).GetHoursAsync();
        Assert.Equal(("Europe/Dublin", null, 2, "away"), (kept.TimeZone, kept.QuietFrom, kept.Makers, kept.Exceptions.Single().Note));
        Assert.Equal(new HourRange(new(9, 15), TimeOnly.MinValue), kept.Week.Single().Hours.Single());
        Assert.Equal(before, PlanJson.Fingerprint(await store.GetRequestAsync()));
        await store.ClearAsync();
        Assert.Equal("", (await store.GetHoursAsync()).TimeZone);
    }

    [Fact]
    public async Task A_replacement_with_a_doubled_label_changes_nothing()
    {
        var store = await workshop.OpenAsync();
        await store.AddOffcutsAsync([TemporaryWorkshop.Offcut("Old")]);
        await store.AddGiftsAsync([TemporaryWorkshop.Gift("old")]);
        var before = PlanJson.Fingerprint(await store.GetRequestAsync());

        var outcome = await store.ReplaceAsync(new WorkshopContents
        {
            Name = "New",
            Pile = [TemporaryWorkshop.Offcut("N1"), TemporaryWorkshop.Offcut("N2")],
            Gifts = [TemporaryWorkshop.Gift("n"), TemporaryWorkshop.Gift("n")],
            Designs = [new Design { Key = "mine", Title = "Mine", Family = "striped-squares" }],
        });

        var taken = Assert.IsType<ReplaceOutcome.LabelsTaken>(outcome);
        Assert.Empty(taken.Pile);
        Assert.Equal([new TakenLabel(1, "n")], taken.Gifts.AsEnumerable());
        Assert.Equal(before, PlanJson.Fingerprint(await store.GetRequestAsync()));
    }

    [Fact]
    public async Task A_replacement_leaves_what_it_does_not_name()
    {
        var store = await workshop.OpenAsync();
        await store.AddOffcutsAsync([TemporaryWorkshop.Offcut("Old")]);
        await store.AddGiftsAsync([TemporaryWorkshop.Gift("old")]);

        Assert.IsType<ReplaceOutcome.NotEmpty>(await store.ReplaceAsync(new WorkshopContents { Pile = [] }, onlyWhenEmpty: true));
        Assert.IsType<ReplaceOutcome.Replaced>(await store.ReplaceAsync(new WorkshopContents { Pile = [TemporaryWorkshop.Offcut("Old")] }));

        var request = await store.GetRequestAsync();
        Assert.Equal("old", Assert.Single(request.Gifts).Label);
        Assert.Equal("Old", Assert.Single(request.Pile).Label);
    }

    [Fact]
    public async Task The_latest_plan_is_the_one_kept_last_and_old_ones_go()
    {
        var store = await workshop.OpenAsync();
        Assert.Null(await store.FindLatestPlanAsync());

        for (var i = 0; i < WorkshopStore.KeptPlans + 3; i++) await store.AddPlanAsync(EmptyPlan($"shop {i}"));

        var latest = await store.FindLatestPlanAsync();
        Assert.Equal(PlanJson.Write(EmptyPlan($"shop {WorkshopStore.KeptPlans + 2}")), latest!.Json);
        Assert.Equal(latest.Fingerprint, await store.FindLatestFingerprintAsync());
        Assert.Equal((long)WorkshopStore.KeptPlans, workshop.Scalar("SELECT COUNT(*) FROM plans"));
    }

    [Fact]
    public async Task A_run_is_known_after_the_program_was_started_again()
    {
        var run = await (await workshop.OpenAsync()).PutRunAsync(new StoredRun { State = "running", Started = DateTime.UnixEpoch, LimitSeconds = 10, Seed = 3 });
        await (await workshop.OpenAsync()).PutRunAsync(run with { State = "done", Plans = 2, Unmade = [new UnmadeGift("g", [new Reason.OutOfTime()])] });

        var latest = await (await workshop.OpenAsync()).FindLatestRunAsync();

        Assert.Equal((run.Id, "done", 2, "g"), (latest!.Id, latest.State, latest.Plans, latest.Unmade[0].Gift));
    }

    [Fact]
    public async Task Clearing_leaves_an_empty_workshop_with_a_default_shop()
    {
        var store = await workshop.OpenAsync();
        await store.ReplaceAsync(new WorkshopContents { Name = "x", Pile = [TemporaryWorkshop.Offcut("A")], Gifts = [TemporaryWorkshop.Gift("a")], Shop = new Shop { Denominator = 64 } });
        await store.AddPlanAsync(EmptyPlan("x"));

        await store.ClearAsync();

        Assert.Equal(PlanJson.Fingerprint(new PlanRequest()), PlanJson.Fingerprint(await store.GetRequestAsync()));
        Assert.Null(await store.FindLatestPlanAsync());
    }

    public void Dispose() => workshop.Dispose();

    private static Plan EmptyPlan(string workshop)
    {
        var request = new PlanRequest { Workshop = workshop };
        return new Plan
        {
            Request = request,
            Fingerprint = PlanJson.Fingerprint(request),
            Made = [],
            Unmade = [],
            GlueUps = [],
            Steps = [],
            Boards = [],
            Leftovers = [],
            Ledger = [],
            Rods = [],
            Shopping = [],
            Levels = [],
        };
    }
}
