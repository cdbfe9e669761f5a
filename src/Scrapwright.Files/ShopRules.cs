using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Files;

/// <summary>What the values of a shop must keep to, in a file as on a screen.</summary>
public static class ShopRules
{
    private const int LongestName = 60;

    // Sizes by which something is divided, or without which a station or a bit is none.
    private static readonly string[] NeverZero =
    [
        "maximumWidth", "maximumThickness", "kerf", "maximumDepth", "maximumCrosscut", "resawHeight", "throat", "stroke", "clampSpacing", "reach", "drillBits", "diameter", "length",
    ];

    /// <summary>Every value that breaks a rule, with its path; empty when the shop can be worked with.</summary>
    /// <param name="shop">A shop without a null in any list.</param>
    public static ImmutableArray<ValueProblem> Check(Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        var checks = new ValueChecks();
        checks.Require(Enum.IsDefined(shop.Unit), "unit", $"{shop.Unit}", "inch or millimetre");
        checks.Require(shop.Denominator is 2 or 4 or 8 or 16 or 32 or 64, "denominator", $"{shop.Denominator}", "2, 4, 8, 16, 32 or 64");
        checks.Within("confidencePercent", shop.ConfidencePercent, 50, 99);
        checks.Within("minimumContrast", shop.MinimumContrast, 0, 50);
        Clamps(shop, checks);
        Rods(shop, checks);
        Times(shop, checks);
        for (var i = 0; i < shop.RouterBits.Length; i++) checks.Text($"routerBits[{i}]", shop.RouterBits[i], LongestName);
        for (var i = 0; i < shop.Blades.Length; i++) checks.Text($"blades[{i}]", shop.Blades[i], LongestName);
        AirRules.Check(shop, checks);
        Finishing(shop, checks);
        if (shop.HourWorth is { } hour)
        {
            checks.Require(hour.Amount is > 0 and <= 100_000, "hourWorth.amount", $"{hour.Amount}", "an amount above 0, at most 100000");
            checks.Text("hourWorth.currency", hour.Currency, 8);
        }

        Lengths(JsonSerializer.SerializeToNode(shop, PlanJson.Options), "", "", shop.Unit, checks);
        return checks.Problems;
    }

    private static void Clamps(Shop shop, ValueChecks checks)
    {
        for (var i = 0; i < shop.Clamps.Length; i++)
        {
            checks.Text($"clamps[{i}].name", shop.Clamps[i].Name, LongestName);
            checks.Within($"clamps[{i}].count", shop.Clamps[i].Count, 0, 1000);
            checks.Within($"clamps[{i}].forceNewtons", shop.Clamps[i].ForceNewtons, 1, 100_000);
        }
    }

    private static void Rods(Shop shop, ValueChecks checks)
    {
        for (var i = 0; i < shop.Rods.Length; i++)
        {
            checks.Within($"rods[{i}].onHand", shop.Rods[i].OnHand, 0, 10_000);
            var species = shop.Rods[i].Species;
            checks.Require(SpeciesTable.FindKey(species) is not null, $"rods[{i}].species", species, FileMessages.ASpecies(KeysNear(species)));
        }
    }

    private static void Times(Shop shop, ValueChecks checks)
    {
        for (var i = 0; i < shop.Times.Length; i++)
        {
            var time = shop.Times[i];
            checks.Within($"times[{i}].setUpMinutes", time.SetUpMinutes, 0, 10_000);
            checks.Within($"times[{i}].eachMinutes", time.EachMinutes, 0, 10_000);
            checks.Within($"times[{i}].waitMinutes", time.WaitMinutes, 0, 100_000);
            checks.Require(shop.Times.Take(i).All(other => other.Operation != time.Operation), $"times[{i}].operation", $"{time.Operation}", "each operation only once");
        }
    }

    private static void Finishing(Shop shop, ValueChecks checks)
    {
        checks.Require(GlueTable.Find(shop.Glue) is not null, "glue", shop.Glue, FileMessages.AKeyOf("a glue", [.. GlueTable.All.Select(glue => glue.Key)], shop.Glue));
        checks.Require(FinishTable.Find(shop.Finish) is not null, "finish", shop.Finish, ExpectedFinish(shop.Finish));
        var sanding = shop.Abrasives;
        checks.Require(!sanding.Grits.IsDefaultOrEmpty, "abrasives.grits", "none", "at least one grit");
        for (var i = 0; i < (sanding.Grits.IsDefault ? 0 : sanding.Grits.Length); i++)
            checks.Require(GritTable.Find(sanding.Grits[i]) is not null, $"abrasives.grits[{i}]", sanding.Grits[i], FileMessages.AGrit(sanding.Grits[i]));
        checks.Require(sanding.LargestStep is > 1 and <= 4, "abrasives.largestStep", $"{sanding.LargestStep}", "a ratio above 1, at most 4");
        checks.Within("abrasives.wearsAfterCm2", sanding.WearsAfterCm2, 1, 1_000_000);
    }

    /// <summary>What would have been a finish, with the nearest key there is.</summary>
    internal static string ExpectedFinish(string found) => FileMessages.AKeyOf("a finish", [.. FinishTable.All.Select(finish => finish.Key)], found);

    private static IEnumerable<string> KeysNear(string species) =>
        SpeciesTable.Find(species) is { } found ? [found.Key] : SpeciesTable.Suggest(species).Select(near => near.Key);

    // Through the JSON, so that no length is forgotten when the shop learns a new one.
    private static void Lengths(JsonNode? node, string path, string name, LengthUnit unit, ValueChecks checks)
    {
        switch (node)
        {
            case JsonObject length when length["pm"] is { } picometres:
                var value = Length.FromPicometres(picometres.GetValue<long>());
                if (NeverZero.Contains(name)) checks.Positive(path, value, unit);
                else checks.NotNegative(path, value, unit);
                break;
            case JsonObject members:
                foreach (var (key, member) in members) Lengths(member, path.Length == 0 ? key : $"{path}.{key}", key, unit, checks);
                break;
            case JsonArray items:
                for (var i = 0; i < items.Count; i++) Lengths(items[i], $"{path}[{i}]", name, unit, checks);
                break;
        }
    }
}
