using System.Globalization;
using Scrapwright.Core.Measures;

namespace Scrapwright.Client.Numbers;

/// <summary>Forces as a maker reads and writes them: pounds where the shop measures in inches, else newtons; either with its mark anywhere.</summary>
public static class Forces
{
    /// <summary>A force with its mark, to the nearest whole: <c>900 lb</c>.</summary>
    /// <param name="newtons">The force. [N]</param>
    /// <param name="unit">The shop's unit of length.</param>
    public static string Text(double newtons, LengthUnit unit) => unit == LengthUnit.Inch
        ? $"{Math.Round(newtons / CustomaryUnits.NewtonsPerPoundForce).ToString("0", CultureInfo.InvariantCulture)} lb"
        : $"{Math.Round(newtons).ToString("0", CultureInfo.InvariantCulture)} N";

    /// <summary>Reads a force; null when it is none.</summary>
    /// <param name="text">A number, with <c>lb</c>, <c>lbf</c>, <c>N</c> or <c>kN</c> behind it or without.</param>
    /// <param name="unit">The shop's unit of length, for a number without a mark.</param>
    /// <returns>The force. [N]</returns>
    public static double? Read(string text, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(text);
        var rest = text.Trim().Replace(',', '.');
        var start = rest.Length;
        while (start > 0 && char.IsAsciiLetter(rest[start - 1])) start--;
        double? factor = rest[start..].ToLowerInvariant() switch
        {
            "" => unit == LengthUnit.Inch ? CustomaryUnits.NewtonsPerPoundForce : 1,
            "lb" or "lbs" or "lbf" => CustomaryUnits.NewtonsPerPoundForce,
            "n" => 1,
            "kn" => 1000,
            _ => null,
        };
        return double.TryParse(rest[..start].TrimEnd(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number * factor : null;
    }
}
