using System.Globalization;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Sheets;

/// <summary>One number about a wood in the maker's unit.</summary>
/// <param name="Title">What it is: <c>Moves, flat-sawn</c>.</param>
/// <param name="ValuePerUnit">How many of the unit; null when nobody has published it. [<paramref name="Unit"/>]</param>
/// <param name="Unit">The unit as written behind the number.</param>
/// <param name="Decimals">How many decimals are worth showing.</param>
/// <param name="Size">The same as a length, for numbers that are one; null otherwise.</param>
public sealed record WoodFigure(string Title, double? ValuePerUnit, string Unit, int Decimals, Length? Size = null)
{
    /// <summary>The number without its unit, rounded to nearest; <c>not known</c> when there is none.</summary>
    public string Number => ValuePerUnit is { } value ? Written(value) : "not known";

    /// <summary>The number with its unit: <c>1010 lbf</c>.</summary>
    public string Text => ValuePerUnit is null ? Number : $"{Number} {Unit}";

    /// <summary>How much more this is in another wood, as a signed number with the unit; what the two rounded numbers differ by. Empty when either is not known.</summary>
    /// <param name="other">The same figure of the other wood.</param>
    public string DifferenceTo(WoodFigure other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (ValuePerUnit is not { } mine || other.ValuePerUnit is not { } theirs) return "";
        var difference = Math.Round(theirs, Decimals, MidpointRounding.AwayFromZero) - Math.Round(mine, Decimals, MidpointRounding.AwayFromZero);
        var text = Written(Math.Abs(difference));
        return text == Written(0) ? "the same" : $"{(difference < 0 ? "−" : "+")}{text} {Unit}";
    }

    private string Written(double value) => Math.Round(value, Decimals, MidpointRounding.AwayFromZero).ToString($"F{Decimals}", CultureInfo.InvariantCulture);
}
