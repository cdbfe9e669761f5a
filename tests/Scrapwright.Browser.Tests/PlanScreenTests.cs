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

    [Theory, MemberData(nameof(Sizes))]
    public async Task A_fit_that_jams_is_put_right_by_its_button(int width, int height)
    {
        await FillWithExampleAsync();
        using var http = new HttpClient { BaseAddress = Address };
        http.DefaultRequestHeaders.Add("Origin", Address.GetLeftPart(UriPartial.Authority));
        var rows = System.Text.Json.Nodes.JsonNode.Parse(await http.GetStringAsync("/api/gifts"))!.AsArray();
        var stand = rows.Single(row => (string)row!["gift"]!["label"]! == "seed-stand")!;
        stand["gift"]!["options"]!["clearance"] = "1/64 in";
        (await http.PutAsync($"/api/gifts/{stand["id"]}", new StringContent(stand["gift"]!.ToJsonString(), System.Text.Encoding.UTF8, "application/json"))).EnsureSuccessStatusCode();

        var page = await OpenAsync("/plan", width, height);
        await page.Locator("#seconds").SelectOptionAsync("5");
        await page.GetByRole(AriaRole.Button, new() { Name = "Make a plan" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Plan again" })).ToBeVisibleAsync(new() { Timeout = 60_000 });

        var bad = page.Locator(".fit.bad").First;
        await Assertions.Expect(bad.Locator(".fit-verdict")).ToContainTextAsync(new System.Text.RegularExpressions.Regex("Jams|Too tight"));
        await Assertions.Expect(bad.Locator(".fit-months tbody tr")).ToHaveCountAsync(12);
        await AssertFitsAsync(page);
        await AssertAccessibleAsync(page);
        await bad.GetByRole(AriaRole.Button, new() { Name = "Set clearance to" }).ClickAsync();

        await Assertions.Expect(page.Locator(".notice.warning")).ToContainTextAsync("out of date");
        await page.GetByRole(AriaRole.Button, new() { Name = "Plan again" }).ClickAsync();
        await Assertions.Expect(page.Locator(".run-now progress")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Plan again" })).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await Assertions.Expect(page.Locator(".fit.bad")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator(".used-up")).ToContainTextAsync("drying oil");
        await Assertions.Expect(page.Locator(".plan-woods")).ToContainTextAsync("walnut");
    }
}
