using Scrapwright.Cli.Output;
using Scrapwright.Storage;
using Scrapwright.Web;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>Runs the web app.</summary>
internal sealed class ServeCommand(Terminal terminal) : AsyncCommand<ServeSettings>
{
    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, ServeSettings settings, CancellationToken cancellationToken)
    {
        List<string> options = [];
        void Pass(string name, string? value)
        {
            if (value is not null) options.AddRange([name, value]);
        }

        Pass("--urls", settings.Urls);
        Pass("--data", settings.Data);
        Pass("--hosts", settings.Hosts);
        try
        {
            await using var app = await WebApp.BuildAsync([.. options]);
            await app.RunAsync();
            return ExitCodes.Done;
        }
        catch (Exception wrong) when (wrong is WorkshopUnreadableException or StartException)
        {
            await terminal.Error.WriteLineAsync(wrong.Message);
        }
        catch (Exception wrong) when (wrong is FormatException or IOException or System.Net.Sockets.SocketException or UnauthorizedAccessException or InvalidOperationException)
        {
            // The host has no exceptions of its own for addresses: taken, not allowed, or none at all.
            return Refusal.Write(terminal, $"--urls {settings.Urls ?? WebApp.DefaultAddress}", wrong.Message.TrimEnd('.'), "an address that is free, such as http://localhost:5211");
        }

        return ExitCodes.BadInput;
    }
}
