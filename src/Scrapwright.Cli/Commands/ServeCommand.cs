using Scrapwright.Web;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>Runs the web app, which says on its own what keeps it from starting.</summary>
internal sealed class ServeCommand : AsyncCommand<ServeSettings>
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
        return ExitCodes.OfServing(await WebProgram.RunAsync([.. options]));
    }
}
