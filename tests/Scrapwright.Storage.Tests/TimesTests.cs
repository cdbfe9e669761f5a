using Scrapwright.Core.Shops;

namespace Scrapwright.Storage.Tests;

public sealed class TimesTests : IDisposable
{
    private static readonly TimeReading Slow = new(new(2027, 5, 4), Operation.GlueUp, 14, 20) { Note = "alone" };
    private static readonly TimeReading ByHand = new(new(2027, 5, 5), Operation.FaceJoint, 5, 9) { Setting = TimeReading.ByHand };

    private readonly TemporaryWorkshop workshop = new();

    [Fact]
    public async Task Readings_are_kept_in_order_and_deleted_one_by_one()
    {
        var store = await workshop.OpenAsync();
        Assert.Empty(await store.ListTimesAsync());

        var first = await store.AddTimeAsync(Slow);
        await store.AddTimeAsync(ByHand);

        var kept = await (await workshop.OpenAsync()).ListTimesAsync();
        Assert.Equal([Slow, ByHand], kept.Select(t => t.Reading));
        Assert.True(await store.DeleteTimeAsync(first.Id));
        Assert.False(await store.DeleteTimeAsync(first.Id));
        Assert.Equal(ByHand, Assert.Single(await store.ListTimesAsync()).Reading);
    }

    [Fact]
    public async Task New_contents_replace_them_only_when_they_have_some_and_an_emptied_workshop_has_none()
    {
        var store = await workshop.OpenAsync();
        await store.AddTimeAsync(Slow);

        await store.ReplaceAsync(new WorkshopContents { Name = "Shed" });
        Assert.Single(await store.ListTimesAsync());
        await store.ReplaceAsync(new WorkshopContents { Times = [ByHand, Slow] });
        Assert.Equal([ByHand, Slow], (await store.ListTimesAsync()).Select(t => t.Reading));
        await store.ClearAsync();
        Assert.Empty(await store.ListTimesAsync());
    }

    public void Dispose() => workshop.Dispose();
}
