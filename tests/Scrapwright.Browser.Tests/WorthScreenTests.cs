using System.Net.Http.Json;
using System.Text.Json.Nodes;
using Microsoft.Playwright;

namespace Scrapwright.Browser.Tests;

public sealed class WorthScreenTests : ScreenTest
{
    [Theory]
    [InlineData(390, 844)]
    [InlineData(1280, 900)]
    public async Task What_work_took_is_entered_and_making_is_weighed_against_buying(int width, int height)
    {
        await FillWithExampleAsync();
        await CalendarAsync();
        var page = await OpenAsync("/calendar", width, height);
        await page.Locator(".tonight > .tonight-lines .done-mark").First.ClickAsync();
        await page.Locator(".took-minutes").FillAsync("31");
        await AssertAccessibleAsync(page);
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator("p.took")).ToContainTextAsync("Took 31 min");

        await GoAsync(page, "/shop");
        await Assertions.Expect(page.Locator(".paces li")).ToContainTextAsync("from 1 reading");
        await page.Locator("#hour-worth").FillAsync("18");
        await page.Locator("#hour-currency").FillAsync("€");
        await page.Locator("#hour-currency").PressAsync("Tab");
        await page.Locator("#price-name").FillAsync("pond-squares");
        await page.Locator("#price-amount").FillAsync("0.50");
        await page.Locator("#price-days").FillAsync("2");
        await page.Locator("#price-days").PressAsync("Enter");
        await Assertions.Expect(page.Locator(".price-words")).ToHaveTextAsync("a gift, €0.50, here in 2 days");
        await AssertAccessibleAsync(page);
        await AssertFitsAsync(page);

        await GoAsync(page, "/calendar");
        await page.Locator("#make-or-buy summary").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator("#make-or-buy")).ToContainTextAsync("Buying costs €");
        await Assertions.Expect(page.Locator("#make-or-buy")).ToContainTextAsync("Bought ones must fit:");
        await AssertAccessibleAsync(page);
        await AssertFitsAsync(page);
    }

    private async Task CalendarAsync()
    {
        using var http = new HttpClient { BaseAddress = Address, Timeout = TimeSpan.FromMinutes(3) };
        (await http.PostAsJsonAsync("/api/plan/runs", new { seconds = 2 })).EnsureSuccessStatusCode();
        while ((await http.GetFromJsonAsync<JsonNode>("/api/plan/runs/current"))!["state"]!.GetValue<string>() == "running") await Task.Delay(200);
        (await http.PostAsJsonAsync("/api/calendar", new { seconds = 2 })).EnsureSuccessStatusCode();
    }
}
