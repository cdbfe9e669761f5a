using System.Globalization;
using Spectre.Console;

namespace Scrapwright.Cli.Commands;

/// <summary>A day as an option of a command.</summary>
internal static class Day
{
    internal const string StartDescription = "The day from which the dates of occasions count, as 2027-05-04. Without it: today.";

    /// <summary>The day; null when nothing was given.</summary>
    internal static DateOnly? Of(string? text) => DateOnly.TryParseExact(text?.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    internal static ValidationResult Check(string option, string? text) => text is null || Of(text) is not null
        ? ValidationResult.Success()
        : ValidationResult.Error($"{option}: found {text}, expected a day such as 2027-05-04.");
}
