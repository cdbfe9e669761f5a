using System.Collections.Immutable;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files;

/// <summary>What a price must keep to, in a file as on a screen.</summary>
public static class PriceRules
{
    private const int MostDays = 3650;

    /// <summary>Every value that breaks a rule, with its path; empty when the price will do.</summary>
    /// <param name="price">The price.</param>
    public static ImmutableArray<ValueProblem> Check(Price price)
    {
        ArgumentNullException.ThrowIfNull(price);
        var checks = new ValueChecks();
        checks.Require(Enum.IsDefined(price.Kind), "kind", $"{price.Kind}", "gift, part, jig or item");
        checks.Text("name", price.Name, 100, mayBeEmpty: false);
        if (price.Kind == PriceKind.Part && checks.Problems.IsEmpty)
            checks.Require(price.Name.Split('/') is [{ Length: > 0 }, { Length: > 0 }], "name", price.Name, "gift/part, such as pond-squares/square");
        checks.Require(price.Amount is >= 0 and <= Amounts.Most, "amount", $"{price.Amount}", $"0 to {Amounts.Most}");
        checks.Within("days", price.Days, 0, MostDays);
        checks.Text("note", price.Note, 200);
        return checks.Problems;
    }
}
