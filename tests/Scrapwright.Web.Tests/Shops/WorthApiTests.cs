using System.Collections.Immutable;
using System.Net;
using Scrapwright.Client.Api;
using Scrapwright.Core.Shops;

namespace Scrapwright.Web.Tests.Shops;

public sealed class WorthApiTests
{
    private static readonly Price Bit = new(PriceKind.Item, "drill bit", 6.50m, 2);

    [Fact]
    public async Task Prices_and_jigs_are_kept_as_they_are_sent()
    {
        await using var app = await RunningApp.StartAsync();

        Assert.Equal(HttpStatusCode.OK, (await app.PutAsync(ApiRoutes.Prices, ImmutableArray.Create(Bit))).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await app.PutAsync(ApiRoutes.Jigs, ImmutableArray.Create(JigTable.All[0] with { IsOwned = true }))).StatusCode);

        Assert.Equal(Bit, Assert.Single(await app.GetAsync<ImmutableArray<Price>>(ApiRoutes.Prices)));
        Assert.True(Assert.Single(await app.GetAsync<ImmutableArray<Jig>>(ApiRoutes.Jigs)).IsOwned);
    }

    [Fact]
    public async Task What_is_wrong_is_told_by_row_and_nothing_is_kept()
    {
        await using var app = await RunningApp.StartAsync();

        var prices = await RunningApp.ReadProblemAsync(await app.PutAsync(ApiRoutes.Prices, ImmutableArray.Create(Bit, Bit with { Amount = -1 })), 400);
        var jigs = await RunningApp.ReadProblemAsync(await app.PutAsync(ApiRoutes.Jigs, ImmutableArray.Create(JigTable.All[0] with { MakeMinutes = 0 })), 400);

        Assert.Equal(["[1].amount", "[1].name"], prices.Problems.Select(p => p.Field).Order());
        Assert.Equal("[0].makeMinutes", Assert.Single(jigs.Problems).Field);
        Assert.Empty(await app.GetAsync<ImmutableArray<Price>>(ApiRoutes.Prices));
        Assert.Empty(await app.GetAsync<ImmutableArray<Jig>>(ApiRoutes.Jigs));
    }

    [Fact]
    public async Task Without_a_plan_there_is_nothing_to_weigh()
    {
        await using var app = await RunningApp.StartAsync();

        await RunningApp.ReadProblemAsync(await app.Http.GetAsync(ApiRoutes.Worth), 404);
    }
}
