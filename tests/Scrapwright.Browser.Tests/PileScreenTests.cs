using Microsoft.Playwright;

namespace Scrapwright.Browser.Tests;

public sealed class PileScreenTests : ScreenTest
{
    [Theory, MemberData(nameof(Sizes))]
    public async Task The_example_workshop_opens_by_one_click(int width, int height)
    {
        var page = await OpenAsync("/", width, height);

        await page.GetByRole(AriaRole.Button, new() { Name = "Open the example workshop" }).ClickAsync();

        await Assertions.Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("/pile$"));
        await Assertions.Expect(page.Locator(".pile-list > li").First).ToBeVisibleAsync();
        Assert.True(await page.Locator(".pile-list > li").CountAsync() > 20);
        await AssertFitsAsync(page);
    }

    [Theory, MemberData(nameof(Sizes))]
    public async Task The_pile_is_entered_and_mended_by_keyboard_alone(int width, int height)
    {
        var page = await OpenAsync("/", width, height);

        // A new screen has the focus on its heading: from there the example, then the own pile.
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator("#entry")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("walnut 14 3/8 x 2 1/8 x 7/8 x3, cupped 1/16");
        await Assertions.Expect(page.Locator(".readings")).ToContainTextAsync("14 3/8 in long");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".pile-list > li")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator("#entry")).ToBeFocusedAsync();
        await Assertions.Expect(page.Locator("#entry")).ToHaveValueAsync("");

        await page.Keyboard.TypeAsync("cherry 20 x 3 x 1");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".pile-list > li")).ToHaveCountAsync(2);

        // On to the first row's Edit, the newest: add, paste, import, export, find, sort, edit.
        await TabToAsync(page, "button:has-text('Edit')");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".pile-list .entry-input")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("End");
        await page.Keyboard.TypeAsync(" x2");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".pile-list > li").First).ToContainTextAsync("× 2");
        await Assertions.Expect(page.Locator(".pile-list > li").First.Locator("button:has-text('Edit')")).ToBeFocusedAsync();

        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(page.Locator(".pile-list .entry-input")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_misspelt_species_is_mended_by_its_suggestion()
    {
        var page = await OpenAsync("/pile");
        await page.Locator("#entry").FillAsync("purplehrtt 14 x 2 x 7/8");
        await Assertions.Expect(page.Locator(".problems, .guessed").First).ToBeVisibleAsync();
        if (await page.Locator(".suggestion").CountAsync() > 0)
        {
            await page.Locator(".suggestion").First.ClickAsync();
            await Assertions.Expect(page.Locator("#entry")).ToBeFocusedAsync();
        }

        await page.Keyboard.PressAsync("Enter");

        await Assertions.Expect(page.Locator(".pile-list")).ToContainTextAsync("purpleheart");
    }

    [Theory, MemberData(nameof(Sizes))]
    public async Task Many_lines_are_pasted_and_those_not_understood_stay(int width, int height)
    {
        var page = await OpenAsync("/pile", width, height);

        // As a paste into the one-line field does it.
        await page.EvaluateAsync(
            """
            text => {
              const data = new DataTransfer();
              data.setData('text', text);
              document.getElementById('entry').dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }));
            }
            """,
            "walnut 14 x 2 x 7/8\r\nhard maple 22 x 3 x 13/16 x2\r\nthe good stuff\r\nash 24 x 3 x 1\r\n");
        await Assertions.Expect(page.Locator(".paste-tally")).ToContainTextAsync("3 understood");
        await Assertions.Expect(page.Locator("dialog .problems")).ToContainTextAsync("Line 3");
        await AssertFitsAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Add the 3 understood" }).ClickAsync();

        await Assertions.Expect(page.Locator("#paste-text")).ToHaveValueAsync("the good stuff");
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(page.Locator("dialog[open]")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator(".pile-list > li")).ToHaveCountAsync(3);
    }

    [Theory, MemberData(nameof(Sizes))]
    public async Task A_deleted_offcut_comes_back_by_button_and_by_key(int width, int height)
    {
        var page = await OpenAsync("/pile", width, height);
        foreach (var line in new[] { "walnut 14 x 2 x 7/8", "cherry 20 x 3 x 1" })
        {
            await page.Locator("#entry").FillAsync(line);
            await page.Keyboard.PressAsync("Enter");
            await Assertions.Expect(page.Locator("#entry")).ToHaveValueAsync("");
        }

        var rows = page.Locator(".pile-list > li");
        await rows.First.GetByRole(AriaRole.Button, new() { Name = "Delete" }).ClickAsync();
        await Assertions.Expect(rows).ToHaveCountAsync(1);

        // The undo stays when another screen is opened.
        await page.Locator("nav[aria-label=Screens] a[href=gifts]").ClickAsync();
        await page.Locator(".undo-bar .undo").ClickAsync();
        await page.Locator("nav[aria-label=Screens] a[href=pile]").ClickAsync();
        await Assertions.Expect(rows).ToHaveCountAsync(2);

        await rows.First.GetByRole(AriaRole.Button, new() { Name = "Delete" }).ClickAsync();
        await Assertions.Expect(rows).ToHaveCountAsync(1);
        await page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(rows).ToHaveCountAsync(2);
        await Assertions.Expect(rows.First).ToContainTextAsync("cherry");
    }

    [Fact]
    public async Task What_is_typed_without_a_server_is_said_plainly_and_kept()
    {
        var page = await OpenAsync("/pile");
        await page.Context.SetOfflineAsync(true);
        await page.Locator("#entry").FillAsync("cherry 20 x 3 x 1");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator("[role=alert]").First).ToContainTextAsync("does not answer");
        await Assertions.Expect(page.Locator("#entry")).ToHaveValueAsync("cherry 20 x 3 x 1");

        await page.Context.SetOfflineAsync(false);
        await GoAsync(page, "/pile");

        await Assertions.Expect(page.Locator("#entry")).ToHaveValueAsync("cherry 20 x 3 x 1");
    }

    private static async Task TabToAsync(IPage page, string selector)
    {
        for (var i = 0; i < 30; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (await page.EvaluateAsync<bool>("text => document.activeElement.textContent.startsWith(text)", "Edit"))
            {
                return;
            }
        }

        Assert.Fail($"{selector} is not reached with the Tab key.");
    }
}
