using System.ComponentModel;
using Scrapwright.Core.Measures;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>What <c>scrapwright wood</c> takes.</summary>
internal sealed class WoodSettings : CommandSettings
{
    [CommandArgument(0, "<SPECIES>")]
    [Description("A wood by any of its names, in quotes when it has more than one word.")]
    public string Species { get; init; } = "";

    [CommandArgument(1, "[OTHER]")]
    [Description("A second wood to put beside it.")]
    public string? Other { get; init; }

    [CommandOption("-u|--unit <UNIT>")]
    [Description("Unit of sizes: in or mm.")]
    [DefaultValue("in")]
    public string Unit { get; init; } = "in";

    internal LengthUnit LengthUnit => Unit == "mm" ? LengthUnit.Millimetre : LengthUnit.Inch;

    public override ValidationResult Validate() =>
        Unit is "in" or "mm" ? ValidationResult.Success() : ValidationResult.Error($"--unit: found “{Unit}”, expected in or mm.");
}
