using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>What <c>scrapwright worth</c> takes.</summary>
internal sealed class WorthSettings : CommandSettings
{
    [CommandArgument(0, "<PLAN>")]
    [Description("A plan.json that scrapwright plan wrote.")]
    public string Plan { get; init; } = "";

    [CommandOption("-w|--workshop <FOLDER>")]
    [Description("The workshop folder: its shop.json says what an hour is worth (hourWorth), its prices.csv what can be bought, its jigs.csv which jigs there are, its times.csv how long your work took so far. Without it: jigs by minutes alone.")]
    public string? Workshop { get; init; }

    public override ValidationResult Validate() =>
        string.IsNullOrWhiteSpace(Plan) ? ValidationResult.Error("PLAN is empty; expected a plan.json.") : ValidationResult.Success();
}
