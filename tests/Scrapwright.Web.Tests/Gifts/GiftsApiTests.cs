using System.Collections.Immutable;
using System.Net;
using Scrapwright.Client.Api;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Web.Tests.Gifts;

public sealed class GiftsApiTests
{
    private static readonly string AnyDesign = DesignCatalogue.BuiltIn[0].Key;

    [Fact]
    public async Task A_gift_is_added_changed_deleted_and_restored()
    {
        await using var app = await RunningApp.StartAsync();
        var gift = new Gift { Label = "a", Design = AnyDesign, Recipient = "neighbour", Due = new DateOnly(2027, 6, 21), Climate = "heated-temperate", Finish = "drying-oil" };

        var row = await RunningApp.ReadAsync<GiftRow>(await app.PostAsync(ApiRoutes.Gifts, gift));
        await app.PutAsync(ApiRoutes.Gift(row.Id), gift with { Priority = 1 });
        Assert.Equal(HttpStatusCode.NoContent, (await app.Http.DeleteAsync(ApiRoutes.Gift(row.Id))).StatusCode);
        Assert.Empty(await app.GetAsync<ImmutableArray<GiftRow>>(ApiRoutes.Gifts));
        await app.Http.PostAsync(ApiRoutes.GiftRestore(row.Id), null);

        var kept = Assert.Single(await app.GetAsync<ImmutableArray<GiftRow>>(ApiRoutes.Gifts));
        Assert.Equal((row.Id, 1, new DateOnly(2027, 6, 21)), (kept.Id, kept.Gift.Priority, kept.Gift.Due));
        Assert.Equal(("heated-temperate", "drying-oil"), (kept.Gift.Climate, kept.Gift.Finish));
    }

    [Fact]
    public async Task Wrong_values_are_told_by_field()
    {
        await using var app = await RunningApp.StartAsync();
        var gift = new Gift { Label = " ", Design = "unheard-of", Priority = 10 };

        var problem = await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.Gifts, gift), 400);

        Assert.Equal(["label", "priority", "design"], problem.Problems.Select(p => p.Field));
        Assert.Contains(AnyDesign, problem.Problems[2].Expected, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_design_of_the_workshops_own_can_be_named_once_it_is_kept()
    {
        await using var app = await RunningApp.StartAsync();
        var gift = new Gift { Label = "a", Design = "mine" };
        var design = new Design { Key = "mine", Title = "Mine", Family = DesignCatalogue.Families[0].Key };

        await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.Gifts, gift), 400);
        Assert.Equal(HttpStatusCode.OK, (await app.PutAsync(ApiRoutes.Design("mine"), design)).StatusCode);
        Assert.Equal(HttpStatusCode.Created, (await app.PostAsync(ApiRoutes.Gifts, gift)).StatusCode);

        Assert.Equal(DesignCatalogue.BuiltIn.Select(d => d.Key).Append("mine"), (await app.GetAsync<ImmutableArray<Design>>(ApiRoutes.Designs)).Select(d => d.Key));
        await RunningApp.ReadProblemAsync(await app.Http.DeleteAsync(ApiRoutes.Design(AnyDesign)), 409);
    }
}
