using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Scrapwright.Browser.Tests;

public sealed class IdeasScreenTests : ScreenTest
{
    [Theory, MemberData(nameof(Sizes))]
    public async Task A_pile_gives_ideas_and_one_goes_on_the_list(int width, int height)
    {
        await FillWithExampleAsync();
        var page = await OpenAsync("/gifts", width, height);
        await page.GetByText("What can I make?").ClickAsync();
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("/ideas$"));
        await AssertAccessibleAsync(page);
        await page.Locator("#idea-beside").UncheckAsync();
        await page.Locator("#idea-seconds").SelectOptionAsync("5");
        await page.Locator("#find-ideas").ClickAsync();
        await AssertAccessibleAsync(page);

        var first = page.Locator(".ideas > li").First;
        await Assertions.Expect(first).ToContainTextAsync("clamp load", new() { Timeout = 120_000 });
        await AssertAccessibleAsync(page);
        await AssertFitsAsync(page);
        var small = await page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll('main button, main select, main .button, main summary')]
              .filter(e => e.checkVisibility() && e.getBoundingClientRect().height < 47.5).map(e => e.outerHTML.slice(0, 120))
            """);
        Assert.Empty(small);

        await first.GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(first.Locator(".idea-added")).ToContainTextAsync("On the list: ", new() { Timeout = 60_000 });
        await Assertions.Expect(page.Locator(".notice.warning")).ToContainTextAsync("have changed since");
        await AssertAccessibleAsync(page);
        await first.GetByText("To the gifts").ClickAsync();
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Gifts");
        Assert.True(await page.Locator(".gift-list > li").CountAsync() > 9);
    }

    [Fact]
    public async Task A_long_search_can_be_ended_with_what_is_found()
    {
        await FillWithExampleAsync();
        var page = await OpenAsync("/ideas?offcut=P3", 390, 844);
        await Assertions.Expect(page.Locator("#idea-offcut")).ToHaveValueAsync("P3");
        await page.Locator("#idea-kind").SelectOptionAsync("Gifts");
        await page.Locator("#idea-beside").UncheckAsync();
        await page.Locator("#idea-seconds").SelectOptionAsync("60");
        await page.Locator("#find-ideas").ClickAsync();

        await page.GetByText("Stop and show what is found").ClickAsync();

        await Assertions.Expect(page.Locator("#ideas-title")).ToBeVisibleAsync(new() { Timeout = 50_000 });
        await Assertions.Expect(page.Locator(".doubt")).ToContainTextAsync("No time was left for");
        await AssertFitsAsync(page);
    }
}
