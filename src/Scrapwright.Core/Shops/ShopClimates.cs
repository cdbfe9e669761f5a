using System.Collections.Immutable;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Shops;

/// <summary>Finds the climate that a shop or a gift names.</summary>
public static class ShopClimates
{
    /// <summary>The climate a name means in this shop.</summary>
    /// <param name="shop">The shop, for its own climates and for where its wood stands.</param>
    /// <param name="name">Key of a climate of the table, or the name of one of the shop's own; case and spaces around it do not matter. Empty for where the shop's wood stands.</param>
    /// <returns>The climate; an own climate goes before one of the table with the same name. Null when nothing has the name, or when an own climate has not twelve months.</returns>
    public static Climate? Find(Shop shop, string name)
    {
        ArgumentNullException.ThrowIfNull(shop);
        string wanted = name.Trim();
        if (wanted.Length == 0)
        {
            wanted = shop.Climate.Trim();
        }

        OwnClimate? own = shop.OwnClimates.FirstOrDefault(climate => climate.Name.Trim().Equals(wanted, StringComparison.OrdinalIgnoreCase));
        return own is null ? ClimateTable.Find(wanted) : FromOwn(own);
    }

    /// <summary>The air where the shop's wood stands; the table's usual one where the shop names none that is known.</summary>
    /// <param name="shop">The shop.</param>
    public static Climate OfShop(Shop shop) => Find(shop, "") ?? ClimateTable.Find(ClimateTable.DefaultKey)!;

    /// <summary>Every climate the shop can choose: its own first, then the table's.</summary>
    /// <param name="shop">The shop.</param>
    public static ImmutableArray<Climate> All(Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        return [.. shop.OwnClimates.Select(FromOwn).OfType<Climate>(), .. ClimateTable.All];
    }

    private static Climate? FromOwn(OwnClimate own) => Climate.AreMonthsOfAYear(own.Months)
        ? new Climate
        {
            Key = own.Name.Trim(),
            Title = own.Name.Trim(),
            Summary = "Measured by the maker.",
            Months = own.Months,
            // [OwnMeasurement]: read off the maker's own instrument.
            Source = new ValueSource("OwnMeasurement", own.Name.Trim(), Confidence.Printed),
        }
        : null;
}
