using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>What <c>scrapwright sheets</c> takes.</summary>
internal sealed class SheetsSettings : CommandSettings
{
    [CommandArgument(0, "<PLAN>")]
    [Description("A plan.json that scrapwright plan wrote.")]
    public string Plan { get; init; } = "";

    [CommandOption("-o|--out <FILE>", isRequired: true)]
    [Description("The PDF to write, or with a name that ends in .svg one picture a sheet, numbered; files of these names are replaced.")]
    public string Out { get; init; } = "";

    [CommandOption("-p|--paper <PAPER>")]
    [Description(PaperName.Description)]
    public string? Paper { get; init; }

    [CommandOption("--labels")]
    [Description("Write the labels for the strips instead of the sheets.")]
    public bool Labels { get; init; }

    public override ValidationResult Validate()
    {
        if (string.IsNullOrWhiteSpace(Plan)) return ValidationResult.Error("PLAN is empty; expected a plan.json.");
        if (string.IsNullOrWhiteSpace(Out)) return ValidationResult.Error("--out is empty; expected the name of a PDF or SVG.");
        return PaperName.Check(Paper);
    }
}
