using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>What <c>scrapwright check</c> takes.</summary>
internal sealed class CheckSettings : FolderArgument
{
    [CommandOption("--start <DATE>")]
    [Description(Day.StartDescription)]
    public string? Start { get; init; }

    public override ValidationResult Validate() => base.Validate() is { Successful: false } folder ? folder : Day.Check("--start", Start);
}
