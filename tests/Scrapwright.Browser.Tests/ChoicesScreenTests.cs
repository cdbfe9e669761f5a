using System.Net.Http.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Scrapwright.Browser.Tests;

public sealed class ChoicesScreenTests : ScreenTest
{
    [Theory, MemberData(nameof(Sizes))]
    public async Task Strips_are_moved_by_keys_put_back_turned_round_and_kept_over_a_reload(int width, int height)
    {
        var glueUp = await PlanAsync();
        var page = await OpenAsync("/plan", width, height);
        var card = await MoveStripsAsync(page, glueUp.Id);
        await Assertions.Expect(Places(card).First).ToBeFocusedAsync();

        await page.Keyboard.PressAsync("ArrowDown");
        await Assertions.Expect(Places(card).Nth(1)).ToContainTextAsync(glueUp.FromUpperEdge[0]);
        await Assertions.Expect(Places(card).Nth(1)).ToBeFocusedAsync();
        await Assertions.Expect(page.Locator("#voice")).ToContainTextAsync($"{glueUp.FromUpperEdge[0]} is now place 2 of {glueUp.FromUpperEdge.Length} from the upper edge, between");
        await Assertions.Expect(card.Locator(".audit-says")).ToContainTextAsync(new Regex("The audit (agrees|says no)"));
        await AssertFitsAsync(page);
        await AssertAccessibleAsync(page);

        await page.Keyboard.PressAsync("Escape");
        Assert.Equal(glueUp.FromUpperEdge, await PiecesAsync(card));
        await Assertions.Expect(page.Locator("#voice")).ToContainTextAsync("as in the plan");

        await card.GetByRole(AriaRole.Button, new() { Name = "Turn round" }).ClickAsync();
        await Assertions.Expect(card.Locator(".audit-says")).ToContainTextAsync("The audit agrees.");
        await card.GetByRole(AriaRole.Button, new() { Name = "Keep this order" }).ClickAsync();
        await Assertions.Expect(card).ToContainTextAsync("Your order");

        await page.ReloadAsync();
        await DrawnAsync(page);
        await Assertions.Expect(Card(page, glueUp.Id)).ToContainTextAsync("Your order");
        await Assertions.Expect(Card(page, glueUp.Id).Locator(".strips tbody th").First).ToHaveTextAsync(glueUp.FromUpperEdge[^1]);
        await Assertions.Expect(page.Locator(".notice.warning")).ToHaveCountAsync(0);
    }

    [Theory, MemberData(nameof(Sizes))]
    public async Task A_strip_is_dragged_with_the_mouse_numbers_follow_under_way_and_Escape_lets_it_go_back(int width, int height)
    {
        var glueUp = await PlanAsync();
        var page = await OpenAsync("/plan", width, height);
        var card = await MoveStripsAsync(page, glueUp.Id);
        var (x, from, to) = await BetweenAsync(card, 0, 2);

        await page.Mouse.MoveAsync(x, from);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x, to, new() { Steps = 8 });
        await Assertions.Expect(card.Locator(".order-figures")).ToContainTextAsync("was");
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(card.Locator(".dragged")).ToHaveCountAsync(0);
        Assert.Equal(glueUp.FromUpperEdge, await PiecesAsync(card));
        await page.Mouse.UpAsync();

        await page.Mouse.MoveAsync(x, from);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x, to, new() { Steps = 8 });
        await page.Mouse.UpAsync();
        await Assertions.Expect(Places(card).Nth(2)).ToContainTextAsync(glueUp.FromUpperEdge[0]);
        string[] moved = [glueUp.FromUpperEdge[1], glueUp.FromUpperEdge[2], glueUp.FromUpperEdge[0], .. glueUp.FromUpperEdge[3..]];
        Assert.Equal(moved, await PiecesAsync(card));
        await Assertions.Expect(page.Locator("#voice")).ToContainTextAsync("place 3 of");
        await Assertions.Expect(card.Locator(".audit-says")).ToContainTextAsync(new Regex("The audit (agrees|says no)"));
    }

    [Fact]
    public async Task A_strip_is_dragged_with_a_finger_and_the_page_stays_where_it_is()
    {
        var glueUp = await PlanAsync();
        var page = await OpenAsync("/plan", 390, 844);
        var finger = await FingerAsync(page);
        var card = await MoveStripsAsync(page, glueUp.Id);
        var (x, from, to) = await BetweenAsync(card, 0, 1);
        var scrolled = await page.EvaluateAsync<double>("() => window.scrollY");

        await DragWithFingerAsync(finger, (x, from), (x, to));

        await Assertions.Expect(Places(card).Nth(1)).ToContainTextAsync(glueUp.FromUpperEdge[0]);
        Assert.Equal(scrolled, await page.EvaluateAsync<double>("() => window.scrollY"));
        await Assertions.Expect(card.Locator(".audit-says")).ToContainTextAsync(new Regex("The audit (agrees|says no)"));
    }

    [Theory, MemberData(nameof(Sizes))]
    public async Task Pins_kept_wood_and_marks_outlive_a_reload_and_planning_again_tells_what_changed(int width, int height)
    {
        var glueUp = await PlanAsync();
        var page = await OpenAsync("/plan", width, height);
        var other = Card(page, (await page.Locator(".glue-up").First.GetAttributeAsync("aria-labelledby"))!);
        await other.GetByRole(AriaRole.Button, new() { Name = "Glued" }).ClickAsync();
        await Assertions.Expect(other.GetByRole(AriaRole.Button, new() { Name = "Glued" })).ToHaveAttributeAsync("aria-pressed", "true");
        await Assertions.Expect(other.GetByRole(AriaRole.Button, new() { Name = "Move strips" })).ToBeDisabledAsync();

        var card = Card(page, glueUp.Id);
        await card.Locator("summary", new() { HasText = "Mark, pin and keep" }).ClickAsync();
        var (pinned, saved) = (card.Locator(".strip-choices > li").First, card.Locator(".strip-choices > li").Nth(1));
        await pinned.GetByRole(AriaRole.Button, new() { Name = "Pin here" }).ClickAsync();
        await Assertions.Expect(pinned).ToContainTextAsync("stays in");
        await Assertions.Expect(page.Locator(".notice.warning")).ToHaveCountAsync(0);
        await pinned.GetByRole(AriaRole.Button, new() { Name = "is milled" }).First.ClickAsync();
        await Assertions.Expect(card.Locator(".strip-state").First).ToHaveTextAsync("milled");
        await Assertions.Expect(page.Locator(".notice.warning")).ToHaveCountAsync(0);
        await saved.GetByRole(AriaRole.Button, new() { Name = "Keep for later" }).ClickAsync();
        await Assertions.Expect(page.Locator(".notice.warning")).ToContainTextAsync("out of date");
        await Assertions.Expect(page.Locator(".undo-bar")).ToContainTextAsync("kept for later");
        await AssertFitsAsync(page);
        await AssertAccessibleAsync(page);
        var kept = await saved.Locator(".wood-label").InnerTextAsync();

        await page.ReloadAsync();
        await DrawnAsync(page);
        await Assertions.Expect(page.Locator(".choice-list summary")).ToContainTextAsync("Your choices (4)");
        await page.Locator("#make-plan").ClickAsync();
        await Assertions.Expect(page.Locator(".run-now progress")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("#make-plan")).ToBeVisibleAsync(new() { Timeout = 60_000 });

        await Assertions.Expect(page.Locator(".plan-changes li").First).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".plan-changes")).ToContainTextAsync(kept);
        await Assertions.Expect(other.GetByRole(AriaRole.Button, new() { Name = "Glued" })).ToHaveAttributeAsync("aria-pressed", "true");
        await Assertions.Expect(page.Locator(".notice.warning")).ToHaveCountAsync(0);
        await AssertFitsAsync(page);
        await AssertAccessibleAsync(page);
    }

    [Theory, MemberData(nameof(Sizes))]
    public async Task An_offcut_is_kept_for_later_on_the_pile_and_used_again_by_undo(int width, int height)
    {
        await FillWithExampleAsync();
        var page = await OpenAsync("/pile", width, height);
        var keep = page.Locator(".pile-list > li").First.GetByRole(AriaRole.Button, new() { Name = "Keep for later" });
        await keep.ClickAsync();
        await Assertions.Expect(keep).ToHaveAttributeAsync("aria-pressed", "true");
        await AssertFitsAsync(page);
        await AssertAccessibleAsync(page);

        await page.ReloadAsync();
        await DrawnAsync(page);
        await Assertions.Expect(keep).ToHaveAttributeAsync("aria-pressed", "true");
        await keep.ClickAsync();
        await Assertions.Expect(keep).ToHaveAttributeAsync("aria-pressed", "false");
        await keep.ClickAsync();
        await page.Locator(".undo-bar .undo").ClickAsync();
        await Assertions.Expect(keep).ToHaveAttributeAsync("aria-pressed", "false");
    }

    private static ILocator Card(IPage page, string id) => page.Locator($".glue-up[aria-labelledby=\"{id}\"]");

    private static ILocator Places(ILocator card) => card.Locator(".mover-strip");

    private static async Task<string[]> PiecesAsync(ILocator card) => [.. await card.Locator(".mover-strip .wood-label").AllInnerTextsAsync()];

    private static async Task<ILocator> MoveStripsAsync(IPage page, string id)
    {
        var card = Card(page, id);
        await card.GetByRole(AriaRole.Button, new() { Name = "Move strips" }).ClickAsync();
        await Assertions.Expect(Places(card).First).ToBeVisibleAsync();
        await Places(card).First.EvaluateAsync("strip => strip.scrollIntoView({ block: 'center' })");
        return card;
    }

    /// <summary>From the middle of one place to the middle of another, in the browser's window.</summary>
    private static async Task<(float X, float From, float To)> BetweenAsync(ILocator card, int from, int to)
    {
        var (one, other) = ((await Places(card).Nth(from).BoundingBoxAsync())!, (await Places(card).Nth(to).BoundingBoxAsync())!);
        return (one.X + (one.Width / 2), one.Y + (one.Height / 2), other.Y + (other.Height / 2) + (to > from ? 8 : -8));
    }

    /// <summary>Plans the example and gives its glue-up with most strips.</summary>
    private async Task<(string Id, string[] FromUpperEdge)> PlanAsync()
    {
        await FillWithExampleAsync();
        using var http = new HttpClient { BaseAddress = Address };
        http.DefaultRequestHeaders.Add("Origin", Address.GetLeftPart(UriPartial.Authority));
        (await http.PostAsJsonAsync("/api/plan/runs", new { seconds = 2 })).EnsureSuccessStatusCode();
        while ((string)JsonNode.Parse(await http.GetStringAsync("/api/plan/runs/current"))!["state"]! == "running") await Task.Delay(100);
        var glueUps = JsonNode.Parse(await http.GetStringAsync("/api/plan"))!["glueUps"]!.AsArray();
        var most = glueUps.Skip(1).MaxBy(g => g!["strips"]!.AsArray().Count)!;
        return ((string)most["id"]!, [.. most["strips"]!.AsArray().Select(s => (string)s!["piece"]!).Reverse()]);
    }
}
