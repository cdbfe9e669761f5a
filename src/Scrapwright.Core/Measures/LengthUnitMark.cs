namespace Scrapwright.Core.Measures;

/// <summary>A unit as written after a number: a word or a quote mark.</summary>
/// <param name="Picometres">One of the unit. [pm]</param>
internal readonly record struct LengthUnitMark(long Picometres)
{
    public static readonly LengthUnitMark Inch = new(Length.PicometresPerInch);
    public static readonly LengthUnitMark Foot = new(12 * Length.PicometresPerInch);
    public static readonly LengthUnitMark Millimetre = new(Length.PicometresPerMillimetre);
    private static readonly LengthUnitMark Centimetre = new(10 * Length.PicometresPerMillimetre);
    private static readonly LengthUnitMark Metre = new(1000 * Length.PicometresPerMillimetre);
    private static readonly LengthUnitMark Micrometre = new(Length.PicometresPerMicrometre);
    private static readonly LengthUnitMark Thou = new(Length.PicometresPerInch / 1000);

    /// <summary>The unit of a bare number.</summary>
    public static LengthUnitMark Of(LengthUnit unit) => unit switch
    {
        LengthUnit.Inch => Inch,
        LengthUnit.Millimetre => Millimetre,
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "Inch or Millimetre."),
    };

    /// <summary>Reads a unit after a number, with or without spaces before it.</summary>
    public static bool TryRead(ReadOnlySpan<char> text, int start, out LengthUnitMark unit, out int end)
    {
        var at = start;
        while (Folded(text, at) == ' ') at++;
        return TryReadQuotes(text, at, at > start, out unit, out end) || TryReadWord(text, at, out unit, out end);
    }

    // After a space a quote mark may as well open a quotation, so nothing may follow it directly.
    private static bool TryReadQuotes(ReadOnlySpan<char> text, int at, bool afterSpace, out LengthUnitMark unit, out int end)
    {
        (unit, end) = (Folded(text, at), Folded(text, at + 1)) switch
        {
            ('"', _) => (Inch, at + 1),
            ('\'', '\'') => (Inch, at + 2),
            ('\'', _) => (Foot, at + 1),
            _ => (default, at),
        };
        return end > at && !(afterSpace && char.IsLetterOrDigit(Folded(text, end)));
    }

    private static bool TryReadWord(ReadOnlySpan<char> text, int at, out LengthUnitMark unit, out int end)
    {
        const int Longest = 12; // "centimetres" and "micrometres" have 11 letters; an x may follow.
        Span<char> word = stackalloc char[Longest];
        var length = 0;
        while (length < Longest && Folded(text, at + length) is >= 'a' and <= 'z' and var letter) word[length++] = letter;
        end = at + length;
        var next = Folded(text, end);

        // A digit may follow feet (2ft3in) and nothing else: 4m2 is an area.
        if (TryFind(word[..length], out unit) && !char.IsLetter(next) && (unit == Foot || !char.IsDigit(next)))
        {
            // "in." and "ft." are written too.
            if (word[..length] is "in" or "ft" && next == '.' && !char.IsAsciiDigit(Folded(text, end + 1))) end++;
            return true;
        }

        // In "9mmx20mm" the x belongs to no unit.
        if (length > 1 && word[..length].IndexOf('x') is > 0 and var cross && TryFind(word[..cross], out unit) && length == cross + 1
            && (char.IsAsciiDigit(next) || next == ' '))
        {
            end = at + cross;
            return true;
        }

        (unit, end) = (default, at);
        return false;
    }

    private static bool TryFind(ReadOnlySpan<char> word, out LengthUnitMark unit)
    {
        unit = word switch
        {
            "in" or "inch" or "inches" => Inch,
            "ft" or "foot" or "feet" => Foot,
            "mm" or "millimetre" or "millimetres" or "millimeter" or "millimeters" => Millimetre,
            "cm" or "centimetre" or "centimetres" or "centimeter" or "centimeters" => Centimetre,
            "m" or "metre" or "metres" or "meter" or "meters" => Metre,
            "um" or "micrometre" or "micrometres" or "micrometer" or "micrometers" => Micrometre,
            "thou" => Thou,
            _ => default,
        };
        return unit.Picometres != 0;
    }

    private static char Folded(ReadOnlySpan<char> text, int at) => at < text.Length ? LengthCharacters.Fold(text[at]) : '\0';
}
