using System.Collections.Immutable;
using Scrapwright.Client.Api;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Web.Hosting;

namespace Scrapwright.Web.Gifts;

/// <summary>What a gift must be to be kept. Options that do not fit its design are told by the design itself, on the screen and in the plan.</summary>
internal static class GiftChecks
{
    private const int LongestLabel = 40;
    private const int LongestName = 80;

    internal static ImmutableArray<FieldProblem> Of(Gift gift, IEnumerable<Design> designs)
    {
        var checks = new FieldChecks();
        checks.Text("label", gift.Label, LongestLabel, mayBeEmpty: false);
        checks.Text("recipient", gift.Recipient, LongestName);
        checks.Text("circle", gift.Circle, LongestName);
        checks.Texts("options", gift.Options);
        checks.Within("priority", gift.Priority, 1, 9);
        var keys = DesignCatalogue.BuiltIn.Concat(designs).Select(d => d.Key).ToList();
        if (!keys.Contains(gift.Design, StringComparer.OrdinalIgnoreCase)) checks.Wrong("design", gift.Design, $"one of {string.Join(", ", keys)}");
        return checks.Problems;
    }
}
