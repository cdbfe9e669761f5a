using System.Collections.Immutable;
using System.ComponentModel;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>What <c>scrapwright given</c> takes.</summary>
internal sealed class GivenSettings : FolderArgument
{
    [CommandOption("--occasion <NAME>")]
    [Description("The gifts on the list for this occasion are given: they go from gifts.csv to given.csv, and the occasion goes on to its next date.")]
    public string? Occasion { get; init; }

    [CommandOption("--on <DATE>")]
    [Description("When they were given, as 2027-06-19. Without it: the date of the occasion.")]
    public string? On { get; init; }

    [CommandOption("--except <LABELS>")]
    [Description("Gifts for the occasion that were not given and stay on the list, commas between them.")]
    public string Except { get; init; } = "";

    [CommandOption("--to <NAME>")]
    [Description("Only what this recipient has been given.")]
    public string? To { get; init; }

    internal ImmutableArray<string> Stay => [.. Except.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];

    public override ValidationResult Validate()
    {
        if (base.Validate() is { Successful: false } folder) return folder;
        if (Occasion is null && (On is not null || Except.Length > 0)) return ValidationResult.Error("Found --on or --except without --occasion, expected the name of the occasion too.");
        if (Occasion is not null && To is not null) return ValidationResult.Error("Found --occasion and --to, expected one of them.");
        return Day.Check("--on", On);
    }
}
