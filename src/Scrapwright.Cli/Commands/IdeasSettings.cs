using System.ComponentModel;
using Scrapwright.Core.Plans.Ideas;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>What <c>scrapwright ideas</c> takes.</summary>
internal sealed class IdeasSettings : FolderArgument
{
    [CommandOption("--offcut <LABEL>")]
    [Description("Where this offcut serves best, instead of what can be made.")]
    public string Offcut { get; init; } = "";

    [CommandOption("--buy")]
    [Description("Which single purchase makes most of what is not made possible.")]
    public bool Buy { get; init; }

    [CommandOption("--for <NAME>")]
    [Description("Who the gifts would be for: designs they have had (given.csv) are proposed only when nothing else is left.")]
    public string For { get; init; } = "";

    [CommandOption("--whole-pile")]
    [Description("Look at the whole pile as if there were no gifts.csv. Without it the gifts on the list stay made.")]
    public bool WholePile { get; init; }

    [CommandOption("-f|--from <PLAN>")]
    [Description("A plan.json of this folder. Without it the list is planned first, in a quarter of the time.")]
    public string? From { get; init; }

    [CommandOption("-s|--seconds <N>")]
    [Description("Longest search, in seconds. What it was too short for is said.")]
    [DefaultValue(IdeasQuestion.StandardSeconds)]
    public double Seconds { get; init; } = IdeasQuestion.StandardSeconds;

    [CommandOption("--repeatable")]
    [Description("Count the search's work instead of seconds, for each plan, on one core: the same input then gives the same ideas.")]
    public bool Repeatable { get; init; }

    internal IdeasQuestion Question => new(Offcut.Length > 0 ? IdeasKind.Offcut : Buy ? IdeasKind.Purchase : IdeasKind.Gifts, Offcut, !WholePile, Seconds) { Recipient = For.Trim() };

    public override ValidationResult Validate()
    {
        if (base.Validate() is { Successful: false } folder) return folder;
        if (Offcut.Length > 0 && Buy) return ValidationResult.Error("Found --offcut and --buy, expected one of them.");
        return Seconds > 0 && Seconds <= IdeasQuestion.MostSeconds
            ? ValidationResult.Success()
            : ValidationResult.Error($"--seconds: found {Seconds}, expected a number above 0 and at most {IdeasQuestion.MostSeconds}.");
    }
}
