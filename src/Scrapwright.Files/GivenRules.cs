using System.Collections.Immutable;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Files;

/// <summary>What a gift that was given must keep to, in a file as on a screen. Its design may be one that is no longer there.</summary>
public static class GivenRules
{
    private const int LongestName = 80;
    private const int LongestNote = 300;

    /// <summary>Every value that breaks a rule, by its name; empty when it can be kept.</summary>
    /// <param name="given">What was given.</param>
    public static ImmutableArray<ValueProblem> Check(GivenGift given)
    {
        ArgumentNullException.ThrowIfNull(given);
        var checks = new ValueChecks();
        checks.Require(OccasionRules.IsDay(given.Date), "date", $"{given.Date:yyyy-MM-dd}", FileMessages.ADate);
        checks.Text("occasion", given.Occasion, OccasionRules.LongestName);
        checks.Text("recipient", given.Recipient, LongestName, mayBeEmpty: false);
        checks.Text("circle", given.Circle, LongestName);
        checks.Text("design", given.Design, LongestName, mayBeEmpty: false);
        checks.Texts("options", given.Options);
        checks.Text("note", given.Note, LongestNote);
        return checks.Problems;
    }
}
