using Microsoft.Playwright;

namespace Scrapwright.Browser.Tests;

public sealed class WoodScreenTests : ScreenTest
{
    [Theory, MemberData(nameof(Sizes))]
    public async Task A_wood_is_found_by_typing_and_another_put_beside_it(int width, int height)
    {
        var page = await OpenAsync("/wood", width, height);
        await page.Locator("#find-wood").FillAsync("waln");
        await Assertions.Expect(page.Locator("[role=option]").First).ToContainTextAsync("walnut");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("/wood/black-walnut$"));
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Walnut");
        await Assertions.Expect(page.Locator(".wood-figures")).ToContainTextAsync("1010");
        await AssertFitsAsync(page);

        await page.Locator("#find-beside").FillAsync("hard maple");
        await page.Locator("#find-beside-list [role=option]").First.ClickAsync();
        await Assertions.Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("/wood/black-walnut/sugar-maple$"));
        await Assertions.Expect(page.Locator(".compare")).ToContainTextAsync("+440 lbf");
        await Assertions.Expect(page.Locator(".contrasts")).ToContainTextAsync("strong contrast, much lighter");
        await AssertFitsAsync(page);

        await page.GoBackAsync();
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Walnut");
    }

    [Fact]
    public async Task An_address_to_keep_opens_the_wood_and_one_with_a_slip_names_the_nearest()
    {
        var page = await OpenAsync("/wood/wallnut");
        await page.Locator(".notice a").ClickAsync();
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Walnut");
        await GoAsync(page, "/wood/black-walnut/sugar-maple");
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Walnut and hard maple");
    }

    [Fact]
    public async Task Once_open_it_needs_no_server()
    {
        var page = await OpenAsync("/wood");
        await page.Context.SetOfflineAsync(true);

        await page.Locator("#find-wood").FillAsync("padauk");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Padauk");
        await page.Locator("#opening-size").FillAsync("4 in");
        await page.Keyboard.PressAsync("Tab");

        await Assertions.Expect(page.Locator(".fit-answer .fit-verdict")).ToContainTextAsync("in ");
    }

    [Theory]
    [InlineData(390, 844, ColorScheme.Dark)]
    [InlineData(1280, 900, ColorScheme.Light)]
    public async Task Folded_out_it_has_no_serious_finding_and_does_not_scroll_sideways(int width, int height, ColorScheme colours)
    {
        await FillWithExampleAsync();
        var page = await OpenAsync("/wood/wallnut", width, height, colours);
        foreach (var path in new[] { "/wood/black-walnut", "/wood/padauk/american-beech" })
        {
            await GoAsync(page, path);
            foreach (var fold in await page.Locator("main details > summary").AllAsync()) await fold.ClickAsync();
            await AssertAccessibleAsync(page);
            await AssertFitsAsync(page);
        }

        await page.Locator("#find-wood").FillAsync("ma");
        await Assertions.Expect(page.Locator("#find-wood-list")).ToBeVisibleAsync();
        await AssertAccessibleAsync(page);
        await AssertFitsAsync(page);
    }

    [Theory, MemberData(nameof(Sizes))]
    public async Task A_fit_is_tried_and_answers_as_it_is_filled_in(int width, int height)
    {
        var page = await OpenAsync("/wood/black-walnut", width, height);
        var verdict = page.Locator(".fit-answer .fit-verdict");
        await Assertions.Expect(verdict).ToContainTextAsync("Good all year");

        await page.Locator("#opening-size").FillAsync("4 in");
        await page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(verdict).ToContainTextAsync("Jams in ");
        await Assertions.Expect(page.Locator(".fit-months tbody tr")).ToHaveCountAsync(12);
        await page.Locator("#lives-in").SelectOptionAsync("tropical");
        await Assertions.Expect(page.Locator(".fit-answer")).ToContainTextAsync("Lives in: Open house in the damp tropics");
        await AssertFitsAsync(page);
    }
}
