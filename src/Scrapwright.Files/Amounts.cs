using System.Globalization;

namespace Scrapwright.Files;

/// <summary>Amounts of money as people write them, exact.</summary>
internal static class Amounts
{
    /// <summary>No price and no material costs more.</summary>
    internal const decimal Most = 1_000_000;

    /// <summary>The amount of a text such as <c>12.50</c>, or <c>12,50</c> where commas are decimal; null when it is none.</summary>
    internal static decimal? Find(string text, bool decimalCommas = false) =>
        decimal.TryParse(decimalCommas ? text.Replace(',', '.') : text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var amount) ? amount : null;

    internal static string Write(decimal amount) => amount.ToString(CultureInfo.InvariantCulture);
}
