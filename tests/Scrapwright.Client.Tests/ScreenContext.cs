using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Scrapwright.Client.Browser;
using Scrapwright.Client.Calendar;
using Scrapwright.Client.Ideas;
using Scrapwright.Client.Shell;
using Scrapwright.Client.Years;

namespace Scrapwright.Client.Tests;

/// <summary>A browser page in memory with the client's own services behind it and a stand-in for the server.</summary>
public abstract class ScreenContext : BunitContext
{
    /// <summary>Services as in the program, the wire ending in <see cref="Far"/>.</summary>
    protected ScreenContext()
    {
        JSInterop.SetupModule("./scrapwright.js").Mode = JSRuntimeMode.Loose;
        Services.AddSingleton(new HttpClient(Far) { BaseAddress = new Uri("http://localhost/") });
        Services.AddSingleton<Server>();
        Services.AddSingleton<Workshop>();
        Services.AddSingleton<PlanRun>();
        Services.AddSingleton<BrowserDoor>();
        Services.AddSingleton<Drafts>();
        Services.AddSingleton<Undoing>();
        Services.AddSingleton<Announcer>();
        Services.AddSingleton<KeptChoices>();
        Services.AddSingleton<IdeaBoard>();
        Services.AddSingleton<CalendarBoard>();
        Services.AddSingleton<AdviceBoard>();
        Services.AddSingleton<YearsBoard>();
        Services.AddSingleton<TimeBoard>();
    }

    /// <summary>The far end of the wire.</summary>
    private protected StandInServer Far { get; } = new();

    /// <summary>The workshop as the screens see it.</summary>
    protected Workshop Workshop => Services.GetRequiredService<Workshop>();
}
