using System.Collections.Immutable;
using System.Net;
using Scrapwright.Client.Api;

namespace Scrapwright.Web.Tests.Hosting;

public sealed class SameSiteTests
{
    [Theory]
    [InlineData("Origin", "https://elsewhere.example")]
    [InlineData("Origin", "null")]
    [InlineData("Origin", "http://127.0.0.1:1")]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    public async Task A_page_of_another_site_changes_nothing(string header, string value)
    {
        await using var app = await RunningApp.StartAsync();
        using var request = new HttpRequestMessage(HttpMethod.Post, ApiRoutes.Offcuts) { Content = RunningApp.Json(RunningApp.Entry("W1")) };
        request.Headers.Add(header, value);

        await RunningApp.ReadProblemAsync(await app.Http.SendAsync(request), 403);

        Assert.Empty(await app.GetAsync<ImmutableArray<OffcutRow>>(ApiRoutes.Offcuts));
    }

    [Fact]
    public async Task Our_own_page_may_change_things()
    {
        await using var app = await RunningApp.StartAsync();
        using var request = new HttpRequestMessage(HttpMethod.Post, ApiRoutes.Offcuts) { Content = RunningApp.Json(RunningApp.Entry("W1")) };
        request.Headers.Add("Origin", app.Http.BaseAddress!.GetLeftPart(UriPartial.Authority));
        request.Headers.Add("Sec-Fetch-Site", "same-origin");

        Assert.Equal(HttpStatusCode.Created, (await app.Http.SendAsync(request)).StatusCode);
    }

    [Theory]
    [InlineData("elsewhere.example", false)]
    [InlineData("localhost.elsewhere.example", false)]
    [InlineData("localhost", true)]
    [InlineData("192.168.1.20", true)]
    [InlineData("[::1]", true)]
    public async Task A_foreign_name_for_this_machine_reads_nothing(string host, bool answered)
    {
        await using var app = await RunningApp.StartAsync();
        using var request = new HttpRequestMessage(HttpMethod.Get, ApiRoutes.Offcuts);
        request.Headers.Host = host;

        var response = await app.Http.SendAsync(request);

        Assert.Equal(answered ? HttpStatusCode.OK : HttpStatusCode.Forbidden, response.StatusCode);
    }

    [Fact]
    public async Task An_address_of_the_API_that_is_not_there_is_told_as_a_problem()
    {
        await using var app = await RunningApp.StartAsync();

        await RunningApp.ReadProblemAsync(await app.Http.GetAsync("/api/nothing/here"), 404);
    }
}
