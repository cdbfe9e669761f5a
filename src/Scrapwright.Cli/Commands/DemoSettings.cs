using System.ComponentModel;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>What <c>scrapwright demo</c> takes.</summary>
internal sealed class DemoSettings : CommandSettings
{
    [CommandArgument(0, "<FOLDER>")]
    [Description("Where to write it; made when it is not there.")]
    public string Folder { get; init; } = "";

    [CommandOption("-f|--force")]
    [Description("Write even where something is already; files of the same names are replaced.")]
    public bool Force { get; init; }
}
