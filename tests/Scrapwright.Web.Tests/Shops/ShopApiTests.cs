using System.Collections.Immutable;
using System.Net;
using Scrapwright.Client.Api;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Web.Tests.Shops;

public sealed class ShopApiTests
{
    [Fact]
    public async Task The_default_shop_is_kept_as_it_is_given()
    {
        await using var app = await RunningApp.StartAsync();

        var shop = await app.GetAsync<Shop>(ApiRoutes.Shop);
        Assert.Equal(HttpStatusCode.OK, (await app.PutAsync(ApiRoutes.Shop, shop with { Unit = LengthUnit.Millimetre, Jointer = shop.Jointer with { MaximumWidth = Length.FromMillimetres(200) } })).StatusCode);

        var kept = await app.GetAsync<Shop>(ApiRoutes.Shop);
        Assert.Equal((LengthUnit.Millimetre, Length.FromMillimetres(200)), (kept.Unit, kept.Jointer.MaximumWidth));
    }

    [Fact]
    public async Task Wrong_values_are_told_by_field_and_the_shop_stays()
    {
        await using var app = await RunningApp.StartAsync();
        var shop = new Shop
        {
            Denominator = 3,
            ConfidencePercent = 100,
            MinimumContrast = -1,
            TableSaw = new TableSaw { Kerf = -Length.FromInches(1, 8) },
            DrillBits = [Length.Zero],
            Clamps = [new ClampKind("bar", Length.FromMillimetres(100_001), -1)],
        };

        var problem = await RunningApp.ReadProblemAsync(await app.PutAsync(ApiRoutes.Shop, shop), 400);

        Assert.Equal(
            new HashSet<string> { "denominator", "confidencePercent", "minimumContrast", "tableSaw.kerf", "drillBits[0]", "clamps[0].reach", "clamps[0].count" },
            problem.Problems.Select(p => p.Field).ToHashSet());
        Assert.Equal(new Shop().Denominator, (await app.GetAsync<Shop>(ApiRoutes.Shop)).Denominator);
    }

    [Fact]
    public async Task A_climate_that_a_gift_lives_in_stays_with_the_shop()
    {
        await using var app = await RunningApp.StartAsync();
        var cellar = new OwnClimate("Cellar", [.. Enumerable.Repeat(new ClimateMonth(15, 65), 12)]);
        var gift = new Gift { Label = "a", Design = DesignCatalogue.BuiltIn[0].Key, Climate = "cellar" };

        await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.Gifts, gift), 400);
        Assert.Equal(HttpStatusCode.OK, (await app.PutAsync(ApiRoutes.Shop, new Shop { OwnClimates = [cellar] })).StatusCode);
        Assert.Equal(HttpStatusCode.Created, (await app.PostAsync(ApiRoutes.Gifts, gift)).StatusCode);

        var problem = await RunningApp.ReadProblemAsync(await app.PutAsync(ApiRoutes.Shop, new Shop()), 400);
        Assert.Equal(new FieldProblem("ownClimates", "no “cellar”", "the climate where gift a will live"), Assert.Single(problem.Problems));
    }
}
