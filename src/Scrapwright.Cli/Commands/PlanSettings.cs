using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>What <c>scrapwright plan</c> takes.</summary>
internal sealed class PlanSettings : FolderArgument
{
    private const double MostSeconds = 24 * 60 * 60;

    [CommandOption("-o|--out <OUT>", isRequired: true)]
    [Description("Folder for plan.json, sheets.pdf and labels.pdf; made when it is not there. Files of these names are replaced.")]
    public string Out { get; init; } = "";

    [CommandOption("-s|--seconds <N>")]
    [Description("Longest search, in seconds. It ends earlier when nothing better is possible.")]
    [DefaultValue(10.0)]
    public double Seconds { get; init; } = 10;

    [CommandOption("--seed <N>")]
    [Description("Where the search begins; another number may find another plan.")]
    [DefaultValue(1)]
    public int Seed { get; init; } = 1;

    [CommandOption("-p|--paper <PAPER>")]
    [Description(PaperName.Description)]
    public string? Paper { get; init; }

    [CommandOption("-n|--name <NAME>")]
    [Description("Name of the workshop on the sheets. Without it: the folder's name.")]
    public string? Name { get; init; }

    [CommandOption("-f|--from <PLAN>")]
    [Description("A plan.json to begin from: what is as good stays as it is there, and what changes is listed.")]
    public string? From { get; init; }

    [CommandOption("--start <DATE>")]
    [Description(Day.StartDescription)]
    public string? Start { get; init; }

    [CommandOption("--repeatable")]
    [Description("Count the search's work instead of seconds, on one core: the same input then gives the same plan.")]
    public bool Repeatable { get; init; }

    public override ValidationResult Validate()
    {
        if (base.Validate() is { Successful: false } folder) return folder;
        if (string.IsNullOrWhiteSpace(Out)) return ValidationResult.Error("--out is empty; expected a folder.");
        if (!(Seconds > 0 && Seconds <= MostSeconds)) return ValidationResult.Error($"--seconds: found {Seconds}, expected a number above 0 and at most {MostSeconds}.");
        if (Seed < 0) return ValidationResult.Error($"--seed: found {Seed}, expected a whole number from 0.");
        return Day.Check("--start", Start) is { Successful: false } start ? start : PaperName.Check(Paper);
    }
}
