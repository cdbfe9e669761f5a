using System.Collections.Immutable;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Files;

/// <summary>What an occasion must keep to, in a file as on a screen.</summary>
public static class OccasionRules
{
    /// <summary>Most characters of a name.</summary>
    public const int LongestName = 60;

    private const int LongestNote = 300;
    private static readonly DateOnly FirstDay = new(1900, 1, 1);
    private static readonly DateOnly LastDay = new(9000, 1, 1);

    /// <summary>Every value that breaks a rule, by its name; empty when the occasion can be kept.</summary>
    /// <param name="occasion">The occasion.</param>
    public static ImmutableArray<ValueProblem> Check(Occasion occasion)
    {
        ArgumentNullException.ThrowIfNull(occasion);
        var checks = new ValueChecks();
        checks.Text("name", occasion.Name, LongestName, mayBeEmpty: false);
        checks.Require(IsDay(occasion.Date), "date", $"{occasion.Date:yyyy-MM-dd}", FileMessages.ADate);
        checks.Text("note", occasion.Note, LongestNote);
        return checks.Problems;
    }

    /// <summary>Whether a date is one of those a workshop knows: 1900 to 8999.</summary>
    internal static bool IsDay(DateOnly date) => date >= FirstDay && date < LastDay;
}
