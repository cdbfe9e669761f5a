using Scrapwright.Storage;

namespace Scrapwright.Web;

/// <summary>Runs the web application until it is ended; what the web program and the command line's <c>serve</c> do.</summary>
public static class WebProgram
{
    /// <summary>Runs it. A start that fails is told on the standard error in words for the maker.</summary>
    /// <param name="args">Options as <see cref="WebApp.BuildAsync"/> takes them.</param>
    /// <returns>Exit code: 0 when it was ended, 2 when it could not start.</returns>
    public static async Task<int> RunAsync(string[] args)
    {
        try
        {
            await using var app = await WebApp.BuildAsync(args);
            await app.StartAsync();
            await app.WaitForShutdownAsync();
            return 0;
        }
        catch (Exception e) when (e is WorkshopUnreadableException or StartException)
        {
            await Console.Error.WriteLineAsync(e.Message);
        }
        catch (IOException e)
        {
            await Console.Error.WriteLineAsync($"{e.Message} Maybe Scrapwright runs already; choose another port with --urls.");
        }
        catch (InvalidOperationException e)
        {
            // An https address without a certificate, for one; the framework's message says what to do.
            await Console.Error.WriteLineAsync(e.Message);
        }

        return 2;
    }
}
