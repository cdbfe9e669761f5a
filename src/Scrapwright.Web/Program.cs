using Scrapwright.Storage;
using Scrapwright.Web;

try
{
    await using var app = await WebApp.BuildAsync(args);
    await app.RunAsync();
    return 0;
}
catch (Exception e) when (e is WorkshopUnreadableException or StartException)
{
    await Console.Error.WriteLineAsync(e.Message);
    return 2;
}
catch (IOException e) when (e.InnerException is Microsoft.AspNetCore.Connections.AddressInUseException)
{
    await Console.Error.WriteLineAsync($"{e.Message} Maybe Scrapwright runs already; choose another port with --urls.");
    return 2;
}
