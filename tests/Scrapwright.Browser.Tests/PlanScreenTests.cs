using Microsoft.Playwright;

namespace Scrapwright.Browser.Tests;

public sealed class PlanScreenTests : ScreenTest
{
    [Theory, MemberData(nameof(Sizes))]
    public async Task A_plan_is_made_shown_ticked_and_still_there_after_a_reload(int width, int height)
    {
        await FillWithExampleAsync();
        var page = await OpenAsync("/plan", width, height);
        await page.Locator("#seconds").SelectOptionAsync("5");
        await page.GetByRole(AriaRole.Button, new() { Name = "Make a plan" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Plan again" })).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await Assertions.Expect(page.Locator(".glue-up").First).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".levels").First).ToContainTextAsync("Gifts made");
        await AssertFitsAsync(page);

        await page.Locator(".steps input[type=checkbox]").First.CheckAsync();
        await Assertions.Expect(page.Locator(".steps-tally")).ToContainTextAsync("1 of");
        await page.ReloadAsync();
        await DrawnAsync(page);

        await Assertions.Expect(page.Locator(".steps-tally")).ToContainTextAsync("1 of");
        await AssertAccessibleAsync(page);

        foreach (var paper in new[] { "letter", "a4" })
        {
            await page.Locator("#paper-size").SelectOptionAsync(paper);
            foreach (var link in new[] { "Bench sheets", "Strip labels" })
            {
                var address = await page.GetByRole(AriaRole.Link, new() { Name = link }).GetAttributeAsync("href");
                var answer = await page.APIRequest.GetAsync(new Uri(Address, address!).ToString());
                Assert.Equal(200, answer.Status);
                Assert.Equal("application/pdf", answer.Headers["content-type"]);
                Assert.Equal("%PDF"u8.ToArray(), (await answer.BodyAsync())[..4]);
            }
        }

        // A changed pile makes the plan stale, and the page says so.
        await page.Locator("nav[aria-label=Screens] a[href=pile]").ClickAsync();
        await page.Locator("#entry").FillAsync("walnut 30 x 4 x 1");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator("#entry")).ToHaveValueAsync("");
        await page.Locator("nav[aria-label=Screens] a[href=plan]").ClickAsync();
        await Assertions.Expect(page.Locator(".notice.warning")).ToContainTextAsync("out of date");
    }

    [Fact]
    public async Task A_running_search_outlives_a_reload_and_is_cancelled()
    {
        await FillWithExampleAsync();
        var page = await OpenAsync("/plan");
        await page.Locator("#seconds").SelectOptionAsync("300");
        await page.GetByRole(AriaRole.Button, new() { Name = "Make a plan" }).ClickAsync();
        await Assertions.Expect(page.Locator(".run-now progress")).ToBeVisibleAsync();

        await page.ReloadAsync();
        await DrawnAsync(page);
        await Assertions.Expect(page.Locator(".run-now progress")).ToBeVisibleAsync();
        await page.Locator(".run-now button").ClickAsync();

        await Assertions.Expect(page.Locator("#make-plan")).ToBeVisibleAsync(new() { Timeout = 30_000 });
    }
}
