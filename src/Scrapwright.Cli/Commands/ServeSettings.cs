using System.ComponentModel;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>What <c>scrapwright serve</c> takes.</summary>
internal sealed class ServeSettings : CommandSettings
{
    [CommandOption("-u|--urls <URLS>")]
    [Description("Where to listen, semicolons between them. Without it: http://localhost:5210, for this machine only. http://0.0.0.0:5210 lets the phone in.")]
    public string? Urls { get; init; }

    [CommandOption("-d|--data <DIR>")]
    [Description("Folder of the workshop. Without it: Scrapwright in your own data folder.")]
    public string? Data { get; init; }

    [CommandOption("--hosts <NAMES>")]
    [Description("Further names this machine is reached by, commas between them.")]
    public string? Hosts { get; init; }
}
