using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Files;

/// <summary>What the air of a shop and of its recipients must keep to.</summary>
internal static class AirRules
{
    private const int LongestName = 60;

    /// <summary>Whether a name that a gift or the shop has is that of a climate.</summary>
    internal static bool IsKnown(Shop shop, string name) => name.Trim() is { Length: > 0 } wanted && Names(shop).Contains(wanted, StringComparer.OrdinalIgnoreCase);

    /// <summary>What would have been a climate, with the nearest name there is.</summary>
    internal static string Expected(Shop shop, string name) => FileMessages.AKeyOf("a climate", Names(shop), name);

    internal static void Check(Shop shop, ValueChecks checks)
    {
        checks.Require(IsKnown(shop, shop.Climate), "climate", shop.Climate, Expected(shop, shop.Climate));
        if (shop.PileMoisturePercent is { } moisture) checks.Within("pileMoisturePercent", moisture, 4, 30);
        for (var i = 0; i < shop.OwnClimates.Length; i++)
        {
            var own = shop.OwnClimates[i];
            checks.Text($"ownClimates[{i}].name", own.Name, LongestName, mayBeEmpty: false);
            checks.Require(
                shop.OwnClimates.Take(i).All(other => !string.Equals(other.Name.Trim(), own.Name.Trim(), StringComparison.OrdinalIgnoreCase)),
                $"ownClimates[{i}].name", own.Name, "a name of its own");
            var months = own.Months.IsDefault ? [] : own.Months;
            checks.Require(months.Length == 12, $"ownClimates[{i}].months", $"{months.Length}", "12 months, January to December");
            for (var m = 0; m < months.Length; m++)
            {
                checks.Within($"ownClimates[{i}].months[{m}].temperatureCelsius", months[m].TemperatureCelsius, -50, 60);
                checks.Within($"ownClimates[{i}].months[{m}].relativeHumidityPercent", months[m].RelativeHumidityPercent, 0, 100);
            }
        }
    }

    private static IReadOnlyCollection<string> Names(Shop shop) => [.. shop.OwnClimates.Select(own => own.Name.Trim()), .. ClimateTable.All.Select(climate => climate.Key)];
}
