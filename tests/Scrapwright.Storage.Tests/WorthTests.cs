using Scrapwright.Core.Shops;

namespace Scrapwright.Storage.Tests;

public sealed class WorthTests : IDisposable
{
    private static readonly Price Bit = new(PriceKind.Item, "drill bit", 6.50m, 2) { Note = "by post" };

    private readonly TemporaryWorkshop workshop = new();

    [Fact]
    public async Task Prices_and_jigs_are_kept_exactly_and_change_nothing_else()
    {
        var store = await workshop.OpenAsync();
        Assert.Empty(await store.GetPricesAsync());
        Assert.Empty(await store.GetJigsAsync());
        await store.PutNameAsync("Shed");

        await store.PutPricesAsync([Bit]);
        await store.PutJigsAsync([JigTable.All[0] with { IsOwned = true, Material = 1.25m }]);

        var again = await workshop.OpenAsync();
        Assert.Equal(Bit, Assert.Single(await again.GetPricesAsync()));
        var jig = Assert.Single(await again.GetJigsAsync());
        Assert.Equal((JigTable.All[0].Key, true, 1.25m), (jig.Key, jig.IsOwned, jig.Material));
        Assert.Equal("Shed", (await again.GetRequestAsync()).Workshop);
        await store.PutPricesAsync([]);
        Assert.Empty(await store.GetPricesAsync());
        await store.ClearAsync();
        Assert.Empty(await store.GetJigsAsync());
    }

    [Fact]
    public async Task The_worth_of_an_hour_is_kept_with_the_shop()
    {
        var store = await workshop.OpenAsync();

        await store.PutShopAsync(new Shop { HourWorth = new(18.50m, "€") });

        Assert.Equal(new HourWorth(18.50m, "€"), (await (await workshop.OpenAsync()).GetShopAsync()).HourWorth);
    }

    public void Dispose() => workshop.Dispose();
}
