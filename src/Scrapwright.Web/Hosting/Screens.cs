using Scrapwright.Client.Api;

namespace Scrapwright.Web.Hosting;

/// <summary>The screens: the client's files, and its page for every address that is neither a file nor the API.</summary>
internal static class Screens
{
    internal static void MapScreens(this WebApplication app)
    {
        app.MapStaticAssets();
        app.MapFallback("/api/{**rest}", () => Answers.Refuse(StatusCodes.Status404NotFound, "There is nothing at this address."));
        app.MapFallbackToFile("index.html");
    }
}
