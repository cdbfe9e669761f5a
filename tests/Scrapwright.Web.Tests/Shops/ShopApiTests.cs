using System.Collections.Immutable;
using System.Net;
using Scrapwright.Client.Api;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

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
}
