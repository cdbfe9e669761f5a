using System.ComponentModel;
using Scrapwright.Core.Plans.Why;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>What <c>scrapwright why</c> takes.</summary>
internal sealed class WhySettings : CommandSettings
{
    private const double MostSeconds = 60 * 60;

    [CommandArgument(0, "<PLAN>")]
    [Description("A plan.json that scrapwright plan wrote.")]
    public string Plan { get; init; } = "";

    [CommandArgument(1, "<GIFT>")]
    [Description("The gift to ask about. One that is not made: in whose place it could be.")]
    public string Gift { get; init; } = "";

    [CommandOption("--part <PART>")]
    [Description("Which of its glued-up parts, by key. Needed only when there are several.")]
    public string Part { get; init; } = "";

    [CommandOption("--offcut <LABEL>")]
    [Description("Why this offcut is in it.")]
    public string Offcut { get; init; } = "";

    [CommandOption("--resaw")]
    [Description("Why its panels are resawn, or are not.")]
    public bool Resaw { get; init; }

    [CommandOption("--glue-ups")]
    [Description("Why it takes as many glue-ups as it does.")]
    public bool GlueUps { get; init; }

    [CommandOption("-s|--seconds <N>")]
    [Description("Longest search, in seconds.")]
    [DefaultValue(10.0)]
    public double Seconds { get; init; } = 10;

    internal WhyKind Kind => Offcut.Length > 0 ? WhyKind.ThisOffcut : Resaw ? WhyKind.Resawing : GlueUps ? WhyKind.GlueUps : WhyKind.NotMade;

    public override ValidationResult Validate()
    {
        if (string.IsNullOrWhiteSpace(Plan)) return ValidationResult.Error("PLAN is empty; expected a plan.json.");
        if (string.IsNullOrWhiteSpace(Gift)) return ValidationResult.Error("GIFT is empty; expected the label of a gift.");
        if ((Offcut.Length > 0 ? 1 : 0) + (Resaw ? 1 : 0) + (GlueUps ? 1 : 0) > 1) return ValidationResult.Error("Found several questions, expected one of --offcut, --resaw and --glue-ups.");
        return Seconds > 0 && Seconds <= MostSeconds ? ValidationResult.Success() : ValidationResult.Error($"--seconds: found {Seconds}, expected a number above 0 and at most {MostSeconds}.");
    }
}
