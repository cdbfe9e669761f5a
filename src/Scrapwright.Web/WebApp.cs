using Scrapwright.Planning;
using Scrapwright.Storage;
using Scrapwright.Web.Calendar;
using Scrapwright.Web.Designs;
using Scrapwright.Web.Gifts;
using Scrapwright.Web.Hosting;
using Scrapwright.Web.Offcuts;
using Scrapwright.Web.Planning;
using Scrapwright.Web.Shops;
using Scrapwright.Web.Workshops;
using Scrapwright.Web.Years;

namespace Scrapwright.Web;

/// <summary>Makes the web application: API and screens on one workshop. The web program, the command line and the tests start it from here.</summary>
public static class WebApp
{
    /// <summary>Where it listens when nothing else is asked for: on this machine only.</summary>
    public const string DefaultAddress = "http://localhost:5210";

    /// <summary>Builds the application; nothing listens yet.</summary>
    /// <param name="args">Options: <c>--data DIR</c> chooses the workshop's folder, <c>--urls ADDRESSES</c> where to listen, <c>--hosts NAMES</c> further names the machine is reached by, commas between them.</param>
    /// <param name="services">Changes to the services, for tests; may be null.</param>
    /// <exception cref="WorkshopUnreadableException">The workshop cannot be used; the message is for the maker.</exception>
    /// <exception cref="StartException">An option is wrong; the message is for the maker.</exception>
    public static async Task<WebApplication> BuildAsync(string[] args, Action<IServiceCollection>? services = null)
    {
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            Args = args,
            // The command line hosts this too: files and manifests lie beside this assembly and carry its name.
            ApplicationName = typeof(WebApp).Assembly.GetName().Name,
            ContentRootPath = AppContext.BaseDirectory,
        });
        var folder = builder.Configuration["data"] ?? WorkshopFolder.Default;
        if (string.IsNullOrWhiteSpace(folder)) throw new StartException("--data is empty. Expected a folder.");
        CheckAddresses(builder.Configuration["urls"]);
        var opening = WorkshopStore.OpenAsync(folder);

        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = RequestBody.DrainedBytes;
        });
        if (string.IsNullOrWhiteSpace(builder.Configuration["urls"])) builder.WebHost.UseUrls(DefaultAddress);
        builder.Logging.AddFilter("Microsoft", LogLevel.Warning).AddFilter("Microsoft.Hosting.Lifetime", LogLevel.Warning);
        // A start that fails is told by WebProgram.
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.None);
        // The handler of RefusingFaults logs what matters; the middleware would log it a second time.
        builder.Logging.AddFilter("Microsoft.AspNetCore.Diagnostics.ExceptionHandlerMiddleware", LogLevel.None);
        builder.Services.Configure<HostOptions>(host => host.ShutdownTimeout = TimeSpan.FromSeconds(5));
        builder.Services.AddSingleton(_ => TimeProvider.System);
        builder.Services.AddSingleton<MakePlan>((request, limits, former, progress, cancellationToken) => Planner.PlanAsync(request, limits, former, progress, cancellationToken));
        builder.Services.AddSingleton<PlanRuns>();
        builder.Services.AddSingleton<ShopCalendars>();
        builder.Services.AddHostedService(provider => provider.GetRequiredService<PlanRuns>());
        services?.Invoke(builder.Services);

        var store = await opening;
        builder.Services.AddSingleton(store);
        var app = builder.Build();
        app.UseRefusingFaults();
        app.UseSameSiteOnly(HostNames.Allowed(app.Configuration));
        MapApi(app);
        app.MapScreens();
        app.Lifetime.ApplicationStarted.Register(() => Announce(app, store));
        return app;
    }

    private static void CheckAddresses(string? urls)
    {
        foreach (var url in (urls ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            // * and + stand for every address of the machine.
            if (!Uri.TryCreate(url.Replace("://*", "://any", StringComparison.Ordinal).Replace("://+", "://any", StringComparison.Ordinal), UriKind.Absolute, out var uri) || uri.Scheme is not ("http" or "https"))
                throw new StartException($"--urls: {url} is no address to listen on. Expected such as {DefaultAddress}, or http://0.0.0.0:5210 for the whole network.");
        }
    }

    private static void MapApi(WebApplication app)
    {
        app.MapOffcuts();
        app.MapGifts();
        app.MapYears();
        app.MapShop();
        app.MapHours();
        app.MapTimes();
        app.MapWorth();
        app.MapDesigns();
        app.MapWorkshop();
        app.MapExample();
        app.MapFiles();
        app.MapRuns();
        app.MapPlan();
        app.MapPaper();
        app.MapChoices();
        app.MapWhy();
        app.MapIdeas();
        app.MapCalendar();
    }

    private static void Announce(WebApplication app, WorkshopStore store)
    {
        foreach (var address in app.Urls) Console.WriteLine($"Scrapwright is at {address}");
        Console.WriteLine($"The workshop is in {store.Folder}");
        Console.WriteLine("Ctrl+C ends it.");
    }
}
