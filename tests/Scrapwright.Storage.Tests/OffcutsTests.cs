using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Wood;

namespace Scrapwright.Storage.Tests;

public sealed class OffcutsTests : IDisposable
{
    private readonly TemporaryWorkshop workshop = new();

    [Fact]
    public async Task An_offcut_comes_back_as_it_was_after_the_program_was_started_again()
    {
        var offcut = new Offcut
        {
            Label = "W3",
            Species = "black-walnut",
            Length = Length.FromPicometres(365_125_000_001),
            Width = Length.FromInches(17, 8),
            Thickness = Length.FromInches(7, 8),
            Count = 3,
            Faces = Faces.OneSurfaced,
            Rings = RingOrientation.Unknown,
            Cup = Length.FromInches(1, 16),
            Bow = Length.FromInches(1, 32),
            Twist = Length.FromMicrometres(500),
            Defects = [new Defect(DefectKind.Knot, Length.FromInches(4), Length.FromInches(5)), new Defect(DefectKind.Wane, Length.Zero, Length.FromInches(1, 2))],
            Note = "from the old shelf; “good” end is marked ½",
        };
        await (await workshop.OpenAsync()).AddOffcutsAsync([new NewOffcut(offcut, LengthUnit.Millimetre)]);

        var kept = Assert.Single(await (await workshop.OpenAsync()).ListOffcutsAsync());

        Assert.Equal(LengthUnit.Millimetre, kept.Unit);
        Assert.Equal(offcut with { Defects = kept.Offcut.Defects }, kept.Offcut);
        Assert.Equal(offcut.Defects, kept.Offcut.Defects.AsEnumerable());
        Assert.Equal(365_125_000_001L, workshop.Scalar("SELECT LengthPm FROM offcuts"));
        Assert.Equal("integer", workshop.Scalar("SELECT typeof(LengthPm) FROM offcuts"));
    }

    [Fact]
    public async Task A_label_that_stands_on_wood_already_is_refused_and_nothing_is_added()
    {
        var store = await workshop.OpenAsync();
        await store.AddOffcutsAsync([TemporaryWorkshop.Offcut("W1")]);

        var outcome = await store.AddOffcutsAsync([TemporaryWorkshop.Offcut("W2"), TemporaryWorkshop.Offcut("w1"), TemporaryWorkshop.Offcut("W2")]);

        var taken = Assert.IsType<AddOutcome<StoredOffcut>.LabelsTaken>(outcome);
        Assert.Equal([new TakenLabel(1, "w1"), new TakenLabel(2, "W2")], taken.Labels.AsEnumerable());
        Assert.Single(await store.ListOffcutsAsync());
    }

    [Fact]
    public async Task The_label_of_a_single_piece_is_taken_too()
    {
        var store = await workshop.OpenAsync();
        await store.AddOffcutsAsync([TemporaryWorkshop.Offcut("W1", count: 2)]);

        var outcome = await store.AddOffcutsAsync([TemporaryWorkshop.Offcut("W1b")]);

        Assert.IsType<AddOutcome<StoredOffcut>.LabelsTaken>(outcome);
        Assert.IsType<AddOutcome<StoredOffcut>.Added>(await store.AddOffcutsAsync([TemporaryWorkshop.Offcut("W1c")]));
    }

    [Fact]
    public async Task Empty_labels_get_the_least_free_number_of_their_species()
    {
        var store = await workshop.OpenAsync();

        await store.AddOffcutsAsync([TemporaryWorkshop.Offcut(""), TemporaryWorkshop.Offcut("W2"), TemporaryWorkshop.Offcut("", "hard-maple"), TemporaryWorkshop.Offcut("")]);

        Assert.Equal(["W1", "W2", "HM1", "W3"], (await store.ListOffcutsAsync()).Select(r => r.Offcut.Label));
    }

    [Fact]
    public async Task A_deleted_offcut_comes_back_in_its_old_place_with_its_id()
    {
        var store = await workshop.OpenAsync();
        await store.AddOffcutsAsync([TemporaryWorkshop.Offcut("A"), TemporaryWorkshop.Offcut("B"), TemporaryWorkshop.Offcut("C")]);
        var before = await store.ListOffcutsAsync();

        Assert.True(await store.DeleteOffcutAsync(before[1].Id));
        Assert.False(await store.DeleteOffcutAsync(before[1].Id));
        Assert.Equal(["A", "C"], (await store.ListOffcutsAsync()).Select(r => r.Offcut.Label));
        Assert.IsType<ChangeOutcome<StoredOffcut>.Missing>(await store.UpdateOffcutAsync(before[1].Id, TemporaryWorkshop.Offcut("B")));
        Assert.IsType<ChangeOutcome<StoredOffcut>.Changed>(await store.RestoreOffcutAsync(before[1].Id));

        Assert.Equal(before.Select(r => (r.Id, r.Offcut.Label)), (await store.ListOffcutsAsync()).Select(r => (r.Id, r.Offcut.Label)));
    }

    [Fact]
    public async Task A_deleted_offcut_stays_away_while_its_label_stands_on_another()
    {
        var store = await workshop.OpenAsync();
        await store.AddOffcutsAsync([TemporaryWorkshop.Offcut("A")]);
        var id = (await store.ListOffcutsAsync())[0].Id;
        await store.DeleteOffcutAsync(id);
        await store.AddOffcutsAsync([TemporaryWorkshop.Offcut("a")]);

        var outcome = await store.RestoreOffcutAsync(id);

        Assert.Equal(new ChangeOutcome<StoredOffcut>.LabelTaken("A"), outcome);
        Assert.Single(await store.ListOffcutsAsync());
    }

    [Fact]
    public async Task A_change_keeps_place_and_id_and_may_keep_the_label()
    {
        var store = await workshop.OpenAsync();
        await store.AddOffcutsAsync([TemporaryWorkshop.Offcut("A"), TemporaryWorkshop.Offcut("B")]);
        var id = (await store.ListOffcutsAsync())[0].Id;
        var wider = TemporaryWorkshop.Offcut("");
        wider = wider with { Offcut = wider.Offcut with { Width = Length.FromInches(5) } };

        Assert.IsType<ChangeOutcome<StoredOffcut>.Changed>(await store.UpdateOffcutAsync(id, wider));
        Assert.Equal(new ChangeOutcome<StoredOffcut>.LabelTaken("B"), await store.UpdateOffcutAsync(id, TemporaryWorkshop.Offcut("B")));

        var first = (await store.ListOffcutsAsync())[0];
        Assert.Equal((id, "A", Length.FromInches(5)), (first.Id, first.Offcut.Label, first.Offcut.Width));
    }

    [Fact]
    public async Task Many_writers_at_once_lose_nothing_and_share_no_label()
    {
        // Two stores on one folder stand for two programs.
        WorkshopStore[] stores = [await workshop.OpenAsync(), await workshop.OpenAsync()];

        await Task.WhenAll(Enumerable.Range(0, 40).Select(i => Task.Run(async () =>
        {
            var added = await stores[i % 2].AddOffcutsAsync([TemporaryWorkshop.Offcut(""), TemporaryWorkshop.Offcut("")]);
            Assert.IsType<AddOutcome<StoredOffcut>.Added>(added);
            await stores[i % 2].GetRequestAsync();
        })));

        var labels = (await stores[0].ListOffcutsAsync()).Select(r => r.Offcut.Label).ToList();
        Assert.Equal(80, labels.Count);
        Assert.Equal(Enumerable.Range(1, 80).Select(n => $"W{n}").Order(), labels.Order());
        Assert.Equal("ok", workshop.Scalar("PRAGMA integrity_check"));
    }

    public void Dispose() => workshop.Dispose();
}
