using Scrapwright.Core.Shops;

namespace Scrapwright.Files;

/// <summary>What the air of a shop and of its recipients must keep to.</summary>
internal static class AirRules
{
    private const int LongestName = 60;

    internal static void Check(Shop shop, ValueChecks checks)
    {
        checks.Text("climate", shop.Climate, LongestName, mayBeEmpty: false);
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
}
