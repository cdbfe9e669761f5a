using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>What <c>scrapwright entry</c> takes.</summary>
internal sealed class EntrySettings : CommandSettings
{
    [CommandArgument(0, "[LINE]")]
    [Description("One offcut in quotes: species, length x width x thickness, and what else there is to say.")]
    public string? Line { get; init; }

    [CommandOption("-u|--unit <UNIT>")]
    [Description("Unit of numbers without one: in or mm.")]
    [DefaultValue("in")]
    public string Unit { get; init; } = "in";

    public override ValidationResult Validate() =>
        Unit is "in" or "mm" ? ValidationResult.Success() : ValidationResult.Error($"--unit: found “{Unit}”, expected in or mm.");
}
