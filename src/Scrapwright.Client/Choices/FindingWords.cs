using System.Globalization;
using System.Text.RegularExpressions;
using Scrapwright.Core.Plans;

namespace Scrapwright.Client.Choices;

/// <summary>What the audit finds in an order of strips, in the maker's words.</summary>
public static partial class FindingWords
{
    /// <summary>One finding as a sentence.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="plan">The plan it is about.</param>
    public static string Say(AuditFinding finding, Plan plan)
    {
        ArgumentNullException.ThrowIfNull(finding);
        ArgumentNullException.ThrowIfNull(plan);
        if (Neighbours().Match(finding.Where) is not { Success: true } match || plan.GlueUps.FirstOrDefault(g => g.Id == match.Groups["id"].Value) is not { } glueUp)
            return $"{finding.Where}: {finding.Found}, should be {finding.Expected}.";
        string Piece(string group) => glueUp.Strips[int.Parse(match.Groups[group].ValueSpan, CultureInfo.InvariantCulture) - 1].Piece;
        var pair = $"{Piece("one")} and {Piece("other")}";
        return match.Groups["contrast"].Success && double.TryParse(finding.Found, CultureInfo.InvariantCulture, out var deltaE)
            ? $"{pair} look too alike side by side: ΔE {deltaE.ToString("0.0", CultureInfo.InvariantCulture)}, {finding.Expected} is asked."
            : $"{pair}: {finding.Found}, should be {finding.Expected}.";
    }

    [GeneratedRegex(@"^glue-up (?<id>\S+) strips (?<one>\d+) and (?<other>\d+)(?<contrast> contrast)?$")]
    private static partial Regex Neighbours();
}
