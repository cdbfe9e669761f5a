using System.Collections.Immutable;
using System.Net;
using Scrapwright.Client.Api;
using Scrapwright.Core.Shops;

namespace Scrapwright.Web.Tests.Shops;

public sealed class TimesApiTests
{
    private static readonly TimeReading Slow = new(new(2027, 5, 4), Operation.GlueUp, 14, 20) { Note = "alone" };

    [Fact]
    public async Task Readings_are_added_listed_and_deleted()
    {
        await using var app = await RunningApp.StartAsync();

        var response = await app.PostAsync(ApiRoutes.Times, Slow);
        var row = await RunningApp.ReadAsync<TimeRow>(response);

        Assert.Equal((HttpStatusCode.Created, Slow), (response.StatusCode, row.Reading));
        Assert.Equal(row, Assert.Single(await app.GetAsync<ImmutableArray<TimeRow>>(ApiRoutes.Times)));
        Assert.Equal(HttpStatusCode.NoContent, (await app.Http.DeleteAsync(ApiRoutes.Time(row.Id))).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await app.Http.DeleteAsync(ApiRoutes.Time(row.Id))).StatusCode);
        Assert.Empty(await app.GetAsync<ImmutableArray<TimeRow>>(ApiRoutes.Times));
    }

    [Fact]
    public async Task A_reading_that_cannot_be_is_told_by_field_and_not_kept()
    {
        await using var app = await RunningApp.StartAsync();

        var problem = await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.Times, Slow with { TookMinutes = 0, Setting = "hasty" }), 400);

        Assert.Equal(["setting", "tookMinutes"], problem.Problems.Select(p => p.Field).Order());
        Assert.Empty(await app.GetAsync<ImmutableArray<TimeRow>>(ApiRoutes.Times));
    }
}
