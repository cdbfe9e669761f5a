using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>Commands that read a workshop folder.</summary>
internal abstract class FolderArgument : CommandSettings
{
    [CommandArgument(0, "<FOLDER>")]
    [Description("The workshop folder: pile.csv and gifts.csv, and if wanted occasions.csv, given.csv, shop.json and designs/*.json.")]
    public string Folder { get; init; } = "";

    public override ValidationResult Validate() =>
        string.IsNullOrWhiteSpace(Folder) ? ValidationResult.Error("FOLDER is empty; expected a folder.") : ValidationResult.Success();
}
