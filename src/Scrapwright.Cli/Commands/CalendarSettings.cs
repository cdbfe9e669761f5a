using System.ComponentModel;
using System.Globalization;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>What <c>scrapwright calendar</c> takes.</summary>
internal sealed class CalendarSettings : CommandSettings
{
    private const double MostSeconds = 60 * 60;

    private static readonly string[] Moments = ["yyyy-MM-dd", "yyyy-MM-dd HH:mm", "yyyy-MM-ddTHH:mm"];

    [CommandArgument(0, "<PLAN>")]
    [Description("A plan.json that scrapwright plan wrote.")]
    public string Plan { get; init; } = "";

    [CommandOption("-o|--out <OUT>", isRequired: true)]
    [Description("Folder for calendar.json, calendar.ics and week.pdf; made when it is not there. Files of these names are replaced.")]
    public string Out { get; init; } = "";

    [CommandOption("-w|--workshop <FOLDER>")]
    [Description("The workshop folder: its hours.json says when there is time, its gifts.csv by when, its times.csv how long your work took so far, its prices.csv what --why may propose to buy. Without it: the usual hours, and the dates in the plan.")]
    public string? Workshop { get; init; }

    [CommandOption("--start <DATE>")]
    [Description("From when on there is time, by the shop's clock, as 2027-05-04 or \"2027-05-04 18:30\". Without it: now.")]
    public string? Start { get; init; }

    [CommandOption("-b|--before <CALENDAR>")]
    [Description("A calendar.json to keep to where it costs nothing. Evenings of it that are free now are cancelled in calendar.ics.")]
    public string? Before { get; init; }

    [CommandOption("-s|--seconds <N>")]
    [Description("Longest search, in seconds. It ends earlier when nothing better is possible.")]
    [DefaultValue(5.0)]
    public double Seconds { get; init; } = 5;

    [CommandOption("--why")]
    [Description("Also say what holds it up, and what could be done about late gifts: the calendar is made again with one thing otherwise, for up to four times as many seconds. Nothing is changed by it.")]
    public bool Why { get; init; }

    [CommandOption("-p|--paper <PAPER>")]
    [Description(PaperName.Description)]
    public string? Paper { get; init; }

    [CommandOption("--repeatable")]
    [Description("Count the search's work instead of seconds, on one core: the same input then gives the same calendar.")]
    public bool Repeatable { get; init; }

    /// <summary>The start by the shop's clock; null for now.</summary>
    internal DateTime? StartByClock => Start is null ? null : Parse(Start);

    public override ValidationResult Validate()
    {
        if (string.IsNullOrWhiteSpace(Plan)) return ValidationResult.Error("PLAN is empty; expected a plan.json.");
        if (string.IsNullOrWhiteSpace(Out)) return ValidationResult.Error("--out is empty; expected a folder.");
        if (Start is not null && Parse(Start) is null) return ValidationResult.Error($"--start: found {Start}, expected a day such as 2027-05-04, or with a time such as \"2027-05-04 18:30\".");
        return Seconds > 0 && Seconds <= MostSeconds ? PaperName.Check(Paper) : ValidationResult.Error($"--seconds: found {Seconds}, expected a number above 0 and at most {MostSeconds}.");
    }

    private static DateTime? Parse(string text) =>
        DateTime.TryParseExact(text.Trim(), Moments, CultureInfo.InvariantCulture, DateTimeStyles.None, out var moment) ? moment : null;
}
