using System.Collections.Immutable;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files;

/// <summary>What a jig must keep to, in a file as on a screen.</summary>
public static class JigRules
{
    /// <summary>Every value that breaks a rule, with its path; empty when the jig will do.</summary>
    /// <param name="jig">The jig.</param>
    public static ImmutableArray<ValueProblem> Check(Jig jig)
    {
        ArgumentNullException.ThrowIfNull(jig);
        var checks = new ValueChecks();
        checks.Require(IsKey(jig.Key), "key", jig.Key ?? "", FileMessages.AKey);
        checks.Text("name", jig.Name, 60, mayBeEmpty: false);
        checks.Require(!jig.Operations.IsDefaultOrEmpty && jig.Operations.All(Enum.IsDefined), "operations", "none", "at least one operation");
        checks.Within("setUpMinutes", jig.SetUpMinutes, 0, 1000);
        checks.Within("eachSeconds", jig.EachSeconds, 0, 36_000);
        checks.Within("makeMinutes", jig.MakeMinutes, 1, 10_000);
        checks.Require(jig.Material is >= 0 and <= Amounts.Most, "material", $"{jig.Material}", $"0 to {Amounts.Most}");
        checks.Text("note", jig.Note, 200);
        return checks.Problems;
    }

    private static bool IsKey(string? key) => key is { Length: > 0 and <= 60 } && key.All(c => c is '-' or (>= 'a' and <= 'z') or (>= '0' and <= '9'));
}
