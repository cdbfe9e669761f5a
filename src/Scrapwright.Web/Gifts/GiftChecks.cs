using Scrapwright.Web.Hosting;
using System.Collections.Immutable;
using Scrapwright.Client.Api;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Shops;
using Scrapwright.Files;

namespace Scrapwright.Web.Gifts;

/// <summary>What a gift must be to be kept. Options that do not fit its design are told by the design itself, on the screen and in the plan.</summary>
internal static class GiftChecks
{
    internal static ImmutableArray<FieldProblem> Of(Gift gift, Shop shop, IEnumerable<Design> designs, GiftYears years)
    {
        var problems = GiftRules.Check(gift, shop).AsFields();

        // One that came from files may have a date of its own beside an occasion that is none.
        if (gift is { Occasion.Length: > 0, Due: null } && years.FindOccasion(gift.Occasion) is null)
            problems = problems.Add(new("occasion", gift.Occasion, years.Occasions.IsEmpty ? "an occasion; there is none" : $"one of {string.Join(", ", years.Occasions.Select(o => o.Name))}"));
        var keys = DesignCatalogue.BuiltIn.Concat(designs).Select(d => d.Key).ToList();
        return keys.Contains(gift.Design, StringComparer.OrdinalIgnoreCase) ? problems : problems.Add(new("design", gift.Design, $"one of {string.Join(", ", keys)}"));
    }
}
