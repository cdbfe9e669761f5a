namespace Scrapwright.Core.Measures;

/// <summary>Reads lengths as people write them: <c>14 3/8</c>, <c>1-3/8"</c>, <c>1' 2-3/8"</c>, <c>36,5 cm</c>, <c>9mm</c>, <c>.75</c>, <c>1¾"</c>, <c>5/4</c>.</summary>
/// <remarks>
/// What is read is exact; what is not a whole number of picometres, such as 1/3 in, is refused. A bare number is in the given unit, but a
/// bare fraction is always in inches, since nobody writes fractions of a millimetre. Full-width and typographic characters count as plain ones.
/// </remarks>
public static class LengthParser
{
    /// <summary>Reads a text that is a length and nothing else; white space around it is allowed.</summary>
    /// <param name="text">What a person wrote.</param>
    /// <param name="bareUnit">The unit of a number without one.</param>
    /// <param name="allowNegative">Whether a minus sign may stand before the length.</param>
    public static ParseResult<Length> Parse(string text, LengthUnit bareUnit, bool allowNegative = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Read(text, bareUnit, allowNegative);
    }

    /// <summary>Reads a text that is a length with its unit and nothing else; white space around it is allowed.</summary>
    /// <param name="text">What a person or a program wrote.</param>
    /// <param name="allowNegative">Whether a minus sign may stand before the length.</param>
    public static ParseResult<Length> ParseWithUnit(string text, bool allowNegative = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Read(text, null, allowNegative);
    }

    /// <summary>Reads the longest length, without sign, that starts exactly at a position; text may follow.</summary>
    /// <remarks>
    /// Digits are never split, and a malformed number such as <c>3/0</c> or <c>1.2.3</c> is not read in part. After feet, inches need their
    /// mark. A letter may follow (<c>14x2</c>), but a unit word must end there or at an x before the next number.
    /// </remarks>
    /// <param name="text">A longer text.</param>
    /// <param name="start">Where the length starts, from 0.</param>
    /// <param name="bareUnit">The unit of a number without one; a bare fraction is in inches all the same.</param>
    /// <param name="value">The length, or zero.</param>
    /// <param name="end">The position after the length, or <paramref name="start"/>.</param>
    /// <param name="hadUnit">Whether a unit was written.</param>
    /// <returns>Whether there is a length.</returns>
    public static bool TryReadPrefix(ReadOnlySpan<char> text, int start, LengthUnit bareUnit, out Length value, out int end, out bool hadUnit)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(start);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(start, text.Length);
        var reader = new LengthReader(text, bareUnit, allowNegative: false, wholeText: false);
        var isRead = reader.TryRead(start, out value);
        (end, hadUnit) = isRead ? (reader.End, reader.HadUnit) : (start, false);
        return isRead;
    }

    internal static ParseResult<Length> Read(ReadOnlySpan<char> text, LengthUnit? bareUnit, bool allowNegative)
    {
        var reader = new LengthReader(text, bareUnit, allowNegative, wholeText: true);
        if (!reader.TryRead(SkipWhiteSpace(text, 0), out var length)) return ParseResult.Failed<Length>(reader.Error!);
        var rest = SkipWhiteSpace(text, reader.End);
        return rest == text.Length ? ParseResult.Ok(length) : ParseResult.Failed<Length>(reader.ErrorAfter(rest));
    }

    private static int SkipWhiteSpace(ReadOnlySpan<char> text, int at)
    {
        while (at < text.Length && char.IsWhiteSpace(text[at])) at++;
        return at;
    }
}
