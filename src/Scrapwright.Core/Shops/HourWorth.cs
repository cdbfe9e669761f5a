using System.Globalization;

namespace Scrapwright.Core.Shops;

/// <summary>What an hour of the maker's own time is worth to the maker. It changes no plan.</summary>
/// <param name="Amount">In the currency, exact. Above zero</param>
/// <param name="Currency">Sign or code of the currency, such as <c>€</c> or <c>NZD</c>; empty where there is only one.</param>
public sealed record HourWorth(decimal Amount, string Currency = "")
{
    /// <summary>An amount with two decimals and its currency: a code stands behind it, a sign before.</summary>
    /// <param name="amount">The amount; rounded to the nearest hundredth, halves away from zero.</param>
    /// <param name="currency">Sign or code; empty for none.</param>
    public static string Text(decimal amount, string currency)
    {
        ArgumentNullException.ThrowIfNull(currency);
        var number = decimal.Round(amount, 2, MidpointRounding.AwayFromZero).ToString("0.00", CultureInfo.InvariantCulture);
        return currency.Length == 0 ? number : char.IsLetter(currency[^1]) ? $"{number} {currency}" : $"{currency}{number}";
    }
}
