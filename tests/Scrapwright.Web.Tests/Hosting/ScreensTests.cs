using System.Net;

namespace Scrapwright.Web.Tests.Hosting;

public sealed class ScreensTests
{
    [Theory]
    [InlineData("/")]
    [InlineData("/pile")]
    [InlineData("/plan/anything/deep")]
    public async Task Every_address_of_a_screen_gives_the_page(string address)
    {
        await using var app = await RunningApp.StartAsync();

        var response = await app.Http.GetAsync(address);

        Assert.Equal((HttpStatusCode.OK, "text/html"), (response.StatusCode, response.Content.Headers.ContentType?.MediaType));
        Assert.Contains("_framework/blazor.webassembly", await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_clients_program_is_served()
    {
        await using var app = await RunningApp.StartAsync();

        var response = await app.Http.GetAsync("/_framework/blazor.webassembly.js");

        Assert.Equal((HttpStatusCode.OK, "text/javascript"), (response.StatusCode, response.Content.Headers.ContentType?.MediaType));
    }

    [Fact]
    public async Task A_file_that_is_not_there_is_not_found_but_the_page()
    {
        await using var app = await RunningApp.StartAsync();

        Assert.Equal(HttpStatusCode.NotFound, (await app.Http.GetAsync("/css/missing.css")).StatusCode);
    }
}
