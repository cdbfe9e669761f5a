using Microsoft.Playwright;

namespace Scrapwright.Browser.Tests;

public sealed class EveryScreenTests : ScreenTest
{
    private static readonly string[] Paths = ["/", "/pile", "/gifts", "/occasions", "/given", "/wood", "/wood/black-walnut", "/wood/black-walnut/sugar-maple", "/shop", "/plan", "/calendar"];

    [Theory]
    [InlineData(390, 844, ColorScheme.Light)]
    [InlineData(1280, 900, ColorScheme.Light)]
    [InlineData(390, 844, ColorScheme.Dark)]
    [InlineData(1280, 900, ColorScheme.Dark)]
    public async Task No_screen_has_a_serious_finding_or_scrolls_sideways(int width, int height, ColorScheme colours)
    {
        var page = await OpenAsync("/", width, height, colours);
        await AssertAccessibleAsync(page);
        await AssertFitsAsync(page);
        await FillWithExampleAsync();
        foreach (var path in Paths)
        {
            await GoAsync(page, path);
            await AssertAccessibleAsync(page);
            await AssertFitsAsync(page);
        }

        await GoAsync(page, "/gifts");
        await page.Locator("#add-gift").ClickAsync();
        await Assertions.Expect(page.Locator(".gift-form")).ToBeVisibleAsync();
        await AssertAccessibleAsync(page);
        await AssertFitsAsync(page);

        await GoAsync(page, "/pile");
        await page.Locator("#entry").FillAsync("wallnutt 14 x blorp");
        await Assertions.Expect(page.Locator(".problems").First).ToBeVisibleAsync();
        await AssertAccessibleAsync(page);
        await AssertFitsAsync(page);
    }

    [Fact]
    public async Task Everything_pressed_on_a_phone_is_at_least_48_px_high()
    {
        await FillWithExampleAsync();
        var page = await OpenAsync("/", 390, 844);
        foreach (var path in Paths)
        {
            await GoAsync(page, path);
            var small = await page.EvaluateAsync<string[]>(
                """
                () => [...document.querySelectorAll('button, select, input:not([type=checkbox]):not([type=file]), .button, nav a, summary')]
                  .filter(e => e.checkVisibility() && e.getBoundingClientRect().height < 47.5)
                  .map(e => e.outerHTML.slice(0, 120))
                """);
            Assert.Empty(small);
        }
    }

    [Fact]
    public async Task The_skip_link_leads_to_the_content()
    {
        var page = await OpenAsync("/pile");
        await page.EvaluateAsync("() => document.activeElement.blur()");
        await page.Locator(".skip-link").FocusAsync();
        await page.Keyboard.PressAsync("Enter");

        await Assertions.Expect(page.Locator("#content")).ToBeFocusedAsync();
    }

    /// <summary>Pictures of every screen for people to look at: in the folder that SCREEN_PICTURES names, else beside the tests' reports.</summary>
    [Fact]
    public async Task Pictures_of_every_screen()
    {
        var folder = Environment.GetEnvironmentVariable("SCREEN_PICTURES") ?? Path.Combine(AppContext.BaseDirectory, "screens");
        Directory.CreateDirectory(folder);
        await FillWithExampleAsync();
        foreach (var (width, height) in new[] { (390, 844), (1280, 900) })
        {
            foreach (var colours in new[] { ColorScheme.Light, ColorScheme.Dark })
            {
                var page = await OpenAsync("/", width, height, colours);
                foreach (var path in Paths)
                {
                    await GoAsync(page, path);
                    await page.ScreenshotAsync(new() { Path = Path.Combine(folder!, $"{(path == "/" ? "start" : path[1..].Replace('/', '-'))}-{width}-{colours}.png".ToLowerInvariant()), FullPage = path is "/plan" or "/gifts" });
                }
            }
        }
    }
}
