using System.Globalization;
using Microsoft.Playwright;

namespace Scrapwright.Browser.Tests;

public sealed class YearsScreenTests : ScreenTest
{
    private static string Day(int days) => DateOnly.FromDateTime(DateTime.Now).AddDays(days).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    // Chromium in English asks for month, day and year. It tells of a day after every digit of the year.
    [Fact]
    public async Task A_date_typed_digit_by_digit_is_what_was_typed()
    {
        var page = await OpenAsync("/occasions", 390, 844);
        await page.GetByRole(AriaRole.Button, new() { Name = "Add an occasion" }).ClickAsync();
        await page.GetByLabel("Name").FillAsync("Harvest lunch");

        await page.Keyboard.PressAsync("Tab");
        foreach (var digit in "10022027")
        {
            await page.Keyboard.PressAsync($"{digit}");
            await Task.Delay(50, TestContext.Current.CancellationToken);
        }

        await Assertions.Expect(page.Locator("#occasion-date")).ToHaveValueAsync("2027-10-02");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".occasion time")).ToHaveAttributeAsync("datetime", "2027-10-02");
    }

    [Theory, MemberData(nameof(Sizes))]
    public async Task An_occasion_is_made_its_gift_is_given_and_taken_back(int width, int height)
    {
        var page = await OpenAsync("/occasions", width, height);
        await page.GetByRole(AriaRole.Button, new() { Name = "Add an occasion" }).ClickAsync();
        await Assertions.Expect(page.Locator("#occasion-name")).ToBeFocusedAsync();
        await page.GetByLabel("Name").FillAsync("Village fair");
        await page.GetByLabel("Date").FillAsync(Day(-1));
        await page.Locator("#occasion-repeats").SelectOptionAsync(new SelectOptionValue { Index = 1 });
        await Assertions.Expect(page.Locator("#occasion-repeats-hint")).ToContainTextAsync("Then on");
        await AssertFitsAsync(page);
        await AssertAccessibleAsync(page);
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".occasion h2")).ToHaveTextAsync("Village fair");

        await page.Locator(".toolbar").GetByRole(AriaRole.Link, new() { Name = "Gifts" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a gift" }).ClickAsync();
        await page.GetByLabel("For whom").FillAsync("Ada");
        await page.Locator("#gift-occasion").SelectOptionAsync("Village fair");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add the gift" }).ClickAsync();
        await Assertions.Expect(page.Locator(".occasion-head h2")).ToHaveTextAsync("Village fair");

        await page.GetByRole(AriaRole.Button, new() { Name = "They are given" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("Ada: Ada")).ToBeCheckedAsync();
        await Assertions.Expect(page.GetByLabel("Given on")).ToHaveValueAsync(Day(-1));
        await AssertFitsAsync(page);
        await AssertAccessibleAsync(page);
        await page.Locator(".year-panel button[type=submit]").ClickAsync();
        await Assertions.Expect(page.Locator(".gift-card")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator(".undo-bar")).ToContainTextAsync("1 gift given");

        // Without anything to make it from, there is still who and what.
        await page.GetByRole(AriaRole.Button, new() { Name = "The same people again" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Put it on the list" }).ClickAsync();
        await Assertions.Expect(page.Locator(".gift-card")).ToContainTextAsync("Ada");
        await AssertAccessibleAsync(page);
        await page.Locator(".gift-card").GetByRole(AriaRole.Button, new() { Name = "Delete" }).ClickAsync();
        await Assertions.Expect(page.Locator(".undo-bar")).ToContainTextAsync("deleted");
        await page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(page.Locator(".gift-card")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator(".undo-bar")).ToContainTextAsync("1 gift given");
        await page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(page.Locator(".gift-card")).ToHaveCountAsync(2);
    }

    [Theory, MemberData(nameof(Sizes))]
    public async Task Who_got_what_is_searched_corrected_removed_and_brought_back(int width, int height)
    {
        await FillWithExampleAsync();
        var page = await OpenAsync("/gifts", width, height);
        await Assertions.Expect(page.Locator(".gift-doubt").First).ToContainTextAsync("has had the same design");
        await page.GetByRole(AriaRole.Link, new() { Name = "Who got what" }).ClickAsync();
        await Assertions.Expect(page.Locator(".given-group h2").First).ToHaveTextAsync("2026");

        await page.GetByLabel("Search").FillAsync("press crew");
        await Assertions.Expect(page.Locator(".given-row")).ToHaveCountAsync(2);
        await page.GetByLabel("Show").SelectOptionAsync("person");
        await Assertions.Expect(page.Locator(".given-group h2")).ToHaveTextAsync(["press crew"]);
        await AssertFitsAsync(page);
        await AssertAccessibleAsync(page);

        await page.Locator(".given-row").First.GetByRole(AriaRole.Button, new() { Name = "Edit" }).ClickAsync();
        await page.GetByLabel("Note").FillAsync("still in use");
        await AssertFitsAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Save" }).ClickAsync();
        await Assertions.Expect(page.Locator(".given-row").First).ToContainTextAsync("still in use");
        await page.Locator(".given-row").First.GetByRole(AriaRole.Button, new() { Name = "Remove" }).ClickAsync();
        await Assertions.Expect(page.Locator(".undo-bar")).ToContainTextAsync("removed");
        await Assertions.Expect(page.Locator(".given-row")).ToHaveCountAsync(1);
        await page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(page.Locator(".given-row")).ToHaveCountAsync(2);

        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await Assertions.Expect(page.Locator(".given-row button").First).ToBeHiddenAsync();
        await Assertions.Expect(page.Locator(".given-row").First).ToBeVisibleAsync();
    }
}
