using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>What <c>scrapwright audit</c> takes.</summary>
internal sealed class AuditSettings : CommandSettings
{
    [CommandArgument(0, "<PLAN>")]
    [Description("A plan.json that scrapwright plan wrote.")]
    public string Plan { get; init; } = "";

    public override ValidationResult Validate() =>
        string.IsNullOrWhiteSpace(Plan) ? ValidationResult.Error("PLAN is empty; expected a plan.json.") : ValidationResult.Success();
}
