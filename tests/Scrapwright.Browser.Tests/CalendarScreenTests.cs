using System.Net.Http.Json;
using System.Text.Json.Nodes;
using Microsoft.Playwright;

namespace Scrapwright.Browser.Tests;

public sealed class CalendarScreenTests : ScreenTest
{
    private const string Small = """
        () => [...document.querySelectorAll('main button, main select, main .button, main summary, nav a')]
          .filter(e => e.checkVisibility() && e.getBoundingClientRect().height < 47.5).map(e => e.outerHTML.slice(0, 120))
        """;

    [Theory, MemberData(nameof(Sizes))]
    public async Task A_calendar_is_made_marked_and_moved_by_keys(int width, int height)
    {
        await FillWithExampleAsync();
        var page = await OpenAsync("/calendar", width, height);
        await Assertions.Expect(page.Locator(".empty")).ToContainTextAsync("Make a plan");
        await AssertAccessibleAsync(page);
        await PlanAsync();
        await GoAsync(page, "/calendar");
        await page.Locator("#calendar-seconds").SelectOptionAsync("2");
        await page.Locator("#make-calendar").ClickAsync();
        await Assertions.Expect(page.Locator(".ready-words")).ToBeVisibleAsync(new() { Timeout = 90_000 });
        await AssertAccessibleAsync(page);
        await AssertFitsAsync(page);
        Assert.Empty(await page.EvaluateAsync<string[]>(Small));

        var mark = page.Locator(".tonight > .tonight-lines .done-mark").First;
        await mark.ClickAsync();
        await Assertions.Expect(mark).ToHaveAttributeAsync("aria-pressed", "true");
        await page.Locator(".undo-bar .undo").ClickAsync();
        await Assertions.Expect(mark).ToHaveAttributeAsync("aria-pressed", "false");

        var line = page.Locator(".day-line").First;
        await line.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(line).ToHaveAttributeAsync("aria-pressed", "true");
        var before = await page.Locator(".move-words").InnerTextAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(page.Locator("#move-keep")).ToBeEnabledAsync();
        await Assertions.Expect(page.Locator(".move-words")).Not.ToHaveTextAsync(before);
        await AssertAccessibleAsync(page);
        await AssertFitsAsync(page);
        await Assertions.Expect(page.Locator(".day-line[aria-pressed=true]")).ToBeFocusedAsync();
        await page.Locator("#move-keep").ClickAsync();
        await Assertions.Expect(page.Locator(".pin-list li")).Not.ToHaveCountAsync(0);
        await AssertAccessibleAsync(page);
        await GoAsync(page, "/calendar");
        await page.Locator(".pin-list button").First.ClickAsync();
        await Assertions.Expect(page.Locator(".notice.warning").First).ToContainTextAsync("let go");

        using var http = new HttpClient { BaseAddress = Address };
        Assert.StartsWith("BEGIN:VCALENDAR", await http.GetStringAsync("/api/calendar/calendar.ics"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_line_is_dragged_to_another_day_on_a_wide_screen()
    {
        var (page, line, name) = await FirstLineAsync();
        var from = (await line.BoundingBoxAsync())!;
        var to = (await page.Locator("[data-day='2027-05-06'] h3").BoundingBoxAsync())!;

        await page.Mouse.MoveAsync(from.X + 20, from.Y + 20);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(to.X + 30, to.Y + 10, new() { Steps = 8 });
        await page.Mouse.UpAsync();

        await Assertions.Expect(page.Locator($"[data-day='2027-05-06'] .day-line[data-line='{name}']")).ToHaveAttributeAsync("aria-pressed", "true");
        await Assertions.Expect(page.Locator(".move-words")).ToContainTextAsync("Thursday 6 May");
        await page.Locator("#move-leave").ClickAsync();
        await Assertions.Expect(page.Locator($"[data-day='2027-05-04'] .day-line[data-line='{name}']")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_finger_drags_a_line_by_its_grip()
    {
        var (page, line, name) = await FirstLineAsync();
        var grip = (await line.Locator(".day-grip").BoundingBoxAsync())!;
        var day = (await page.Locator("[data-day='2027-05-06'] h3").BoundingBoxAsync())!;
        await DragWithFingerAsync(await FingerAsync(page), (grip.X + (grip.Width / 2), grip.Y + (grip.Height / 2)), (day.X + 30, day.Y + 10));

        await Assertions.Expect(page.Locator($"[data-day='2027-05-06'] .day-line[data-line='{name}']")).ToHaveAttributeAsync("aria-pressed", "true");
    }

    [Fact]
    public async Task What_could_be_done_is_asked_and_an_evening_is_taken()
    {
        await FillWithExampleAsync();
        await PlanAsync();
        using var http = Api();
        // Too late for all of it.
        (await http.PostAsJsonAsync("/api/calendar", new { seconds = 2, firstDay = "2027-06-05" })).EnsureSuccessStatusCode();
        var page = await OpenAsync("/calendar", 390, 844);
        await Assertions.Expect(page.Locator("#calendar-gifts .bar-facts").First).ToContainTextAsync("promise", new() { Timeout = 60_000 });
        await page.Locator("#ask-why").ClickAsync();
        await Assertions.Expect(page.Locator(".ways li").First).ToBeVisibleAsync(new() { Timeout = 90_000 });
        await AssertAccessibleAsync(page);
        await AssertFitsAsync(page);
        Assert.Empty(await page.EvaluateAsync<string[]>(Small));

        var before = await http.GetStringAsync("/api/hours");
        await page.Locator(".ways button").First.ClickAsync();
        await Assertions.Expect(page.Locator(".undo-bar")).ToContainTextAsync("taken into your hours", new() { Timeout = 60_000 });
        Assert.NotEqual(before, await http.GetStringAsync("/api/hours"));
    }

    [Theory, MemberData(nameof(Sizes))]
    public async Task Hours_are_written_on_the_shop_page(int width, int height)
    {
        await FillWithExampleAsync();
        var page = await OpenAsync("/shop", width, height);
        await page.Locator("#hours-monday-add").ClickAsync();
        await page.Locator("#hours-monday-until-0").FillAsync("17:00");
        await page.Locator("#hours-monday-until-0").BlurAsync();

        await Assertions.Expect(page.Locator("#hours-monday-until-0-hint")).ToContainTextAsync("expected later than 18:30");
        await AssertAccessibleAsync(page);
        await AssertFitsAsync(page);
        await page.Locator("#hours-monday-until-0").FillAsync("20:00");
        await page.Locator("#hours-monday-until-0").BlurAsync();
        await Assertions.Expect(page.Locator("#hours-monday-until-0-hint")).ToHaveTextAsync("");
        using var http = Api();
        Assert.Contains("\"until\":\"20:00\"", await http.GetStringAsync("/api/hours"), StringComparison.Ordinal);
    }

    /// <summary>The calendar of the example on a wide screen, and the first line of Tuesday 4 May in sight.</summary>
    private async Task<(IPage Page, ILocator Line, string? Name)> FirstLineAsync()
    {
        await FillWithExampleAsync();
        await PlanAsync();
        using var http = Api();
        (await http.PostAsJsonAsync("/api/calendar", new { seconds = 2, start = "2027-05-03T12:00:00Z" })).EnsureSuccessStatusCode();
        var page = await OpenAsync("/calendar", 1280, 900);
        var line = page.Locator("[data-day='2027-05-04'] .day-line").First;
        await line.ScrollIntoViewIfNeededAsync();
        return (page, line, await line.GetAttributeAsync("data-line"));
    }

    private HttpClient Api()
    {
        var http = new HttpClient { BaseAddress = Address };
        http.DefaultRequestHeaders.Add("Origin", Address.GetLeftPart(UriPartial.Authority));
        return http;
    }

    private async Task PlanAsync()
    {
        using var http = Api();
        (await http.PostAsJsonAsync("/api/plan/runs", new { seconds = 3, seed = 1 })).EnsureSuccessStatusCode();
        while (true)
        {
            var status = JsonNode.Parse(await http.GetStringAsync("/api/plan/runs/current"))!;
            if ((string?)status["state"] != "running") break;
            await Task.Delay(200, TestContext.Current.CancellationToken);
        }
    }
}
