using System.Net.Http.Json;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Scrapwright.Browser.Tests;

/// <summary>A program and a browser for one test.</summary>
public abstract class ScreenTest : IAsyncLifetime
{
    private RunningApp? app;
    private IPlaywright? playwright;
    private IBrowser? browser;

    /// <summary>Phone and desktop.</summary>
    public static TheoryData<int, int> Sizes => new() { { 390, 844 }, { 1280, 900 } };

    /// <summary>Where the program listens.</summary>
    protected Uri Address => app!.Address;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        app = await RunningApp.StartAsync();
        Assertions.SetDefaultExpectTimeout(20_000);
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = Chromium.Path, Args = Chromium.Arguments });
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        playwright?.Dispose();
        if (app is not null)
        {
            await app.DisposeAsync();
        }

        GC.SuppressFinalize(this);
    }

    /// <summary>A new page of the given size.</summary>
    protected async Task<IPage> OpenAsync(string path, int width = 1280, int height = 900, ColorScheme colours = ColorScheme.Light)
    {
        var context = await browser!.NewContextAsync(new()
        {
            BaseURL = Address.ToString(),
            ViewportSize = new() { Width = width, Height = height },
            ColorScheme = colours,
            ReducedMotion = ReducedMotion.Reduce,
        });
        var page = await context.NewPageAsync();
        page.SetDefaultTimeout(30_000);
        await GoAsync(page, path);
        return page;
    }

    /// <summary>Loads a path and waits until the program has drawn it.</summary>
    protected static async Task GoAsync(IPage page, string path)
    {
        await page.GotoAsync(path);
        await DrawnAsync(page);
    }

    /// <summary>Waits until the program has drawn the screen.</summary>
    protected static async Task DrawnAsync(IPage page)
    {
        await Assertions.Expect(page.Locator("#content h1")).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await Assertions.Expect(page.Locator("[aria-busy=true]")).ToHaveCountAsync(0, new() { Timeout = 30_000 });
    }

    /// <summary>Fills the workshop with the example, past the screen.</summary>
    protected async Task FillWithExampleAsync()
    {
        using var http = new HttpClient { BaseAddress = Address };
        http.DefaultRequestHeaders.Add("Origin", Address.GetLeftPart(UriPartial.Authority));
        (await http.PostAsync("/api/example", null)).EnsureSuccessStatusCode();
    }

    /// <summary>Fails on any serious or critical finding, naming what and where.</summary>
    protected static async Task AssertAccessibleAsync(IPage page)
    {
        var result = await page.RunAxe();
        var findings = result.Violations
            .Where(v => v.Impact is "serious" or "critical")
            .Select(v => $"{page.Url}: {v.Id} ({v.Impact}): {v.Help}\n  {string.Join("\n  ", v.Nodes.Take(5).Select(n => n.Html))}");
        Assert.Empty(findings);
    }

    /// <summary>Fails when the page can be scrolled sideways.</summary>
    protected static async Task AssertFitsAsync(IPage page)
    {
        var over = await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
        Assert.True(over <= 0, $"{page.Url} is {over} px wider than the screen.");
    }

    /// <summary>Drags with a finger from one place to another.</summary>
    protected static async Task DragWithFingerAsync(ICDPSession finger, (double X, double Y) from, (double X, double Y) to)
    {
        await TouchAsync("touchStart", from.X, from.Y);
        foreach (var step in Enumerable.Range(1, 8)) await TouchAsync("touchMove", from.X + ((to.X - from.X) * step / 8), from.Y + ((to.Y - from.Y) * step / 8));
        await finger.SendAsync("Input.dispatchTouchEvent", new() { ["type"] = "touchEnd", ["touchPoints"] = Array.Empty<object>() });

        Task TouchAsync(string type, double x, double y) =>
            finger.SendAsync("Input.dispatchTouchEvent", new() { ["type"] = type, ["touchPoints"] = new[] { new Dictionary<string, object> { ["x"] = x, ["y"] = y } } });
    }

    /// <summary>A page that is touched from now on.</summary>
    protected static async Task<ICDPSession> FingerAsync(IPage page)
    {
        var finger = await page.Context.NewCDPSessionAsync(page);
        await finger.SendAsync("Emulation.setTouchEmulationEnabled", new() { ["enabled"] = true });
        return finger;
    }
}
