using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Finishing;

/// <summary>How warm the shop is.</summary>
internal static class ShopAir
{
    /// <summary>Mean temperature of the shop's climate in a month; null when no month of the twelve (definition) is asked or the climate is not known. [°C]</summary>
    internal static double? Celsius(Shop shop, int? month) =>
        month is >= 1 and <= 12 && ShopClimates.Find(shop, shop.Climate) is { } climate && climate.Months[month.Value - 1].TemperatureCelsius is var celsius && double.IsFinite(celsius)
            ? celsius
            : null;
}
