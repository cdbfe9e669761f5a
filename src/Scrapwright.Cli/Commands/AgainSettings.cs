using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>What <c>scrapwright again</c> takes.</summary>
internal sealed class AgainSettings : FolderArgument
{
    [CommandOption("--occasion <NAME>", isRequired: true)]
    [Description("The occasion whose recipients of last time get something again.")]
    public string Occasion { get; init; } = "";

    [CommandOption("-o|--out <FILE>")]
    [Description("A new file for the rows, such as next.csv. Without it they are printed, ready for gifts.csv.")]
    public string? Out { get; init; }

    public override ValidationResult Validate()
    {
        if (base.Validate() is { Successful: false } folder) return folder;
        return Out is not null && string.IsNullOrWhiteSpace(Out) ? ValidationResult.Error("--out is empty; expected a file.") : ValidationResult.Success();
    }
}
