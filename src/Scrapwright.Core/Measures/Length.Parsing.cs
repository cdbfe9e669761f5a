using System.Diagnostics.CodeAnalysis;

namespace Scrapwright.Core.Measures;

public readonly partial record struct Length : ISpanParsable<Length>
{
    /// <summary>Reads a length with its unit, of either sign. User text is read with <see cref="LengthParser"/>, which says what is wrong.</summary>
    /// <param name="s">Such as <c>14 3/8 in</c>.</param>
    /// <param name="provider">Not used: a text means the same everywhere.</param>
    /// <exception cref="FormatException">Not a length with its unit.</exception>
    public static Length Parse(string s, IFormatProvider? provider = null)
    {
        ArgumentNullException.ThrowIfNull(s);
        return Parse(s.AsSpan(), provider);
    }

    /// <inheritdoc cref="Parse(string, IFormatProvider?)"/>
    public static Length Parse(ReadOnlySpan<char> s, IFormatProvider? provider = null)
    {
        var result = LengthParser.Read(s, null, allowNegative: true);
        return result.TryGetValue(out var length) ? length : throw new FormatException(result.Error.Message);
    }

    /// <summary>Reads a length with its unit, of either sign.</summary>
    /// <param name="s">Such as <c>14 3/8 in</c>.</param>
    /// <param name="provider">Not used: a text means the same everywhere.</param>
    /// <param name="result">The length, or zero.</param>
    public static bool TryParse([NotNullWhen(true)] string? s, IFormatProvider? provider, out Length result) =>
        TryParse(s.AsSpan(), provider, out result);

    /// <inheritdoc cref="TryParse(string?, IFormatProvider?, out Length)"/>
    public static bool TryParse(ReadOnlySpan<char> s, IFormatProvider? provider, out Length result) =>
        LengthParser.Read(s, null, allowNegative: true).TryGetValue(out result);
}
