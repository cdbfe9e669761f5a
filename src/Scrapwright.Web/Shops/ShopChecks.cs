using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Scrapwright.Client.Api;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;
using Scrapwright.Web.Hosting;

namespace Scrapwright.Web.Shops;

/// <summary>What a shop must be to be kept.</summary>
internal static class ShopChecks
{
    private static readonly int[] Denominators = [2, 4, 8, 16, 32, 64];

    // Sizes by which something is divided, or without which a station or a bit is none.
    private static readonly string[] NeverZero = ["maximumWidth", "clampSpacing", "drillBits", "diameter", "length", "reach"];

    internal static ImmutableArray<FieldProblem> Of(Shop shop)
    {
        var checks = new FieldChecks();
        if (!Denominators.Contains(shop.Denominator)) checks.Wrong("denominator", $"{shop.Denominator}", "2, 4, 8, 16, 32 or 64");
        checks.Within("confidencePercent", shop.ConfidencePercent, 50, 99);
        checks.Within("minimumContrast", shop.MinimumContrast, 0, 50);
        for (var i = 0; i < shop.Clamps.Length; i++)
        {
            checks.Text($"clamps[{i}].name", shop.Clamps[i].Name, 60);
            checks.Within($"clamps[{i}].count", shop.Clamps[i].Count, 0, 1000);
        }

        for (var i = 0; i < shop.Rods.Length; i++)
        {
            if (!SpeciesTable.All.Any(s => s.Key == shop.Rods[i].Species)) checks.Wrong($"rods[{i}].species", shop.Rods[i].Species, "the key of a species");
            checks.Within($"rods[{i}].onHand", shop.Rods[i].OnHand, 0, 10_000);
        }

        for (var i = 0; i < shop.Times.Length; i++)
        {
            checks.Within($"times[{i}].setUpMinutes", shop.Times[i].SetUpMinutes, 0, 10_000);
            checks.Within($"times[{i}].eachMinutes", shop.Times[i].EachMinutes, 0, 10_000);
            checks.Within($"times[{i}].waitMinutes", shop.Times[i].WaitMinutes, 0, 100_000);
        }

        for (var i = 0; i < shop.RouterBits.Length; i++) checks.Text($"routerBits[{i}]", shop.RouterBits[i], 60);
        for (var i = 0; i < shop.Blades.Length; i++) checks.Text($"blades[{i}]", shop.Blades[i], 60);
        Lengths(JsonSerializer.SerializeToNode(shop, PlanJson.Options), "", "", shop.Unit, checks);
        return checks.Problems;
    }

    // Through the JSON, so that no length is forgotten when the shop learns a new one.
    private static void Lengths(JsonNode? node, string path, string name, LengthUnit unit, FieldChecks checks)
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
