using Microsoft.Playwright;

namespace Scrapwright.Browser.Tests;

public sealed class GiftsAndShopScreenTests : ScreenTest
{
    [Theory, MemberData(nameof(Sizes))]
    public async Task A_gift_is_filled_in_checked_saved_and_changed(int width, int height)
    {
        var page = await OpenAsync("/gifts", width, height);
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a gift" }).ClickAsync();
        await page.GetByLabel("For whom").FillAsync("Ada");
        var count = page.Locator(".gift-form input[type=number]").First;
        await count.FillAsync("-3");
        await Assertions.Expect(page.Locator(".gift-form .problem")).ToContainTextAsync("Found “-3”, expected");
        await AssertFitsAsync(page);

        await page.GetByRole(AriaRole.Button, new() { Name = "Add the gift" }).ClickAsync();
        await Assertions.Expect(count).ToBeFocusedAsync();
        await count.FillAsync("6");
        await Assertions.Expect(page.Locator(".gift-result")).ToContainTextAsync("6");
        await page.Keyboard.PressAsync("Enter");

        await Assertions.Expect(page.Locator(".gift-card")).ToContainTextAsync("6 striped squares");
        await Assertions.Expect(page.Locator("#add-gift")).ToBeFocusedAsync();

        await page.Locator(".gift-card").GetByRole(AriaRole.Button, new() { Name = "Edit" }).ClickAsync();
        await page.GetByLabel("For whom").FillAsync("Ben");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save" }).ClickAsync();
        await Assertions.Expect(page.Locator(".gift-card h2")).ToHaveTextAsync("Ben");

        await page.Locator(".gift-card").GetByRole(AriaRole.Button, new() { Name = "Delete" }).ClickAsync();
        await Assertions.Expect(page.Locator(".gift-card")).ToHaveCountAsync(0);
        await page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(page.Locator(".gift-card h2")).ToHaveTextAsync("Ben");
    }

    [Theory, MemberData(nameof(Sizes))]
    public async Task A_changed_setting_outlives_a_reload_and_goes_back_to_its_default(int width, int height)
    {
        var page = await OpenAsync("/shop", width, height);
        var kerf = page.Locator("#saw-kerf");
        await kerf.FillAsync("2.4 mm");
        await page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(page.Locator("#voice")).ToContainTextAsync("Saved.");

        await page.ReloadAsync();
        await DrawnAsync(page);
        // 2.4 mm is no binary fraction of an inch: shown exactly, not rounded.
        Assert.DoesNotContain("1/8", await kerf.InputValueAsync());

        await kerf.FillAsync("thin");
        await page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(page.Locator("#saw-kerf-hint")).ToContainTextAsync("found “");

        await page.Locator("#table-saw header button").ClickAsync();
        await Assertions.Expect(kerf).ToHaveValueAsync("1/8 in");
        await AssertFitsAsync(page);
    }

    [Theory, MemberData(nameof(Sizes))]
    public async Task Where_the_wood_stands_is_set_and_a_climate_of_ones_own_is_chosen_for_a_gift(int width, int height)
    {
        var page = await OpenAsync("/shop", width, height);
        await page.Locator("#climate").SelectOptionAsync("shed-cold");
        await Assertions.Expect(page.Locator("#voice")).ToContainTextAsync("Saved.");
        await page.Locator("#air details summary").ClickAsync();
        await Assertions.Expect(page.Locator("#air .months tbody tr").First).ToContainTextAsync("16 °F");

        await page.Locator("#add-climate").ClickAsync();
        await page.Locator("#own-name-0").FillAsync("Granny's flat");
        await page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(page.Locator(".own-climate legend")).ToHaveTextAsync("Granny's flat");
        await page.GetByLabel("January, temperature").FillAsync("21 °C");
        await page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(page.GetByLabel("January, temperature")).ToHaveValueAsync("69.8 °F");
        await AssertFitsAsync(page);
        await AssertAccessibleAsync(page);

        await GoAsync(page, "/gifts");
        await page.Locator("#add-gift").ClickAsync();
        await page.Locator("#gift-climate").SelectOptionAsync("Granny's flat");
        await page.Locator("#gift-finish").SelectOptionAsync("shellac");
        await page.Keyboard.PressAsync("Enter");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add the gift" }).ClickAsync();
        await page.Locator(".gift-card").GetByRole(AriaRole.Button, new() { Name = "Edit" }).ClickAsync();
        await Assertions.Expect(page.Locator("#gift-climate")).ToHaveValueAsync("Granny's flat");
        await Assertions.Expect(page.Locator("#gift-finish")).ToHaveValueAsync("shellac");
    }
}
