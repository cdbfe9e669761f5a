using System.Globalization;
using Scrapwright.Core.Measures;

namespace Scrapwright.Client.Numbers;

/// <summary>Temperatures as a maker reads and writes them: °F where the shop measures in inches, else °C; either with its mark anywhere.</summary>
public static class Temperatures
{
    /// <summary>A temperature with its mark, to the nearest tenth: <c>68 °F</c>.</summary>
    /// <param name="celsius">The temperature. [°C]</param>
    /// <param name="unit">The shop's unit of length.</param>
    public static string Text(double celsius, LengthUnit unit) => unit == LengthUnit.Inch
        ? $"{Number(CustomaryUnits.Fahrenheit(celsius))} °F"
        : $"{Number(celsius)} °C";

    /// <summary>Reads a temperature; null when it is none.</summary>
    /// <param name="text">A number, with <c>°F</c>, <c>F</c>, <c>°C</c> or <c>C</c> behind it or without.</param>
    /// <param name="unit">The shop's unit of length, for a number without a mark.</param>
    /// <returns>The temperature. [°C]</returns>
    public static double? Read(string text, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(text);
        var rest = text.Trim().Replace('−', '-').Replace(',', '.').TrimEnd('.');
        var isFahrenheit = unit == LengthUnit.Inch;
        if (rest.Length > 0 && char.ToUpperInvariant(rest[^1]) is 'F' or 'C')
        {
            isFahrenheit = char.ToUpperInvariant(rest[^1]) == 'F';
            rest = rest[..^1].TrimEnd().TrimEnd('°', 'º').TrimEnd();
        }
        else
        {
            rest = rest.TrimEnd('°', 'º').TrimEnd();
        }

        if (!double.TryParse(rest, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)) return null;
        return isFahrenheit ? (number - 32) * 5 / 9 : number;
    }

    private static string Number(double number) => Math.Round(number, 1).ToString("0.#", CultureInfo.InvariantCulture).Replace('-', '−');
}
