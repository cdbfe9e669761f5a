namespace Scrapwright.Core.Measures;

/// <summary>Reads the longest length that starts at a position.</summary>
internal ref struct LengthReader(ReadOnlySpan<char> text, LengthUnit? bareUnit, bool allowNegative, bool wholeText)
{
    private readonly ReadOnlySpan<char> text = text;
    private int hintPosition = -1;
    private string hintExpected = "";

    /// <summary>The position after the length.</summary>
    public int End { get; private set; }

    /// <summary>Whether the length was written with a unit.</summary>
    public bool HadUnit { get; private set; }

    /// <summary>Why nothing could be read.</summary>
    public ParseError? Error { get; private set; }

    /// <summary>Reads a length; on failure <see cref="Error"/> says why.</summary>
    public bool TryRead(int start, out Length length)
    {
        length = default;
        var at = start;
        var negative = Peek(at) == '-';
        if (negative && !allowNegative) return Fail(at, Messages.LengthNotNegative);
        if (negative) at = SkipSpaces(at + 1);
        var numberAt = at;
        if (!TryReadQuantity(ref at, out var quantity)) return Error is null ? Fail(at, Messages.ALength) : false;
        HadUnit = LengthUnitMark.TryRead(text, at, out var unit, out var afterUnit);
        if (HadUnit) at = afterUnit;
        else if (bareUnit is not { } bare) return Fail(at, Messages.AUnit);

        // Nobody writes fractions of a millimetre: 5/4 is five quarters of an inch in any shop.
        else unit = quantity.Written == LengthQuantity.Form.Fraction ? LengthUnitMark.Inch : LengthUnitMark.Of(bare);
        if (!quantity.TryGetPicometres(unit, out var picometres)) return Fail(numberAt, Messages.WholePicometres);
        if (HadUnit && unit == LengthUnitMark.Foot && quantity.Written == LengthQuantity.Form.Whole && !TryAddInches(ref at, ref picometres)) return false;
        if (picometres > long.MaxValue) return Fail(numberAt, Messages.LengthInRange);
        length = Length.FromPicometres((long)(negative ? -picometres : picometres));
        End = at;
        return true;
    }

    /// <summary>Why the text after a length that was read makes no sense.</summary>
    public readonly ParseError ErrorAfter(int position)
    {
        var hinted = hintPosition >= End;
        var at = hinted ? hintPosition : position;
        var expected = hinted ? hintExpected : HadUnit ? Messages.TheEnd : Messages.AUnitOrTheEnd;
        return new(at, LengthCharacters.FoundAt(text, at), expected);
    }

    private bool TryAddInches(ref int at, ref Int128 picometres)
    {
        var inchesAt = SkipSpaces(at);
        if (Peek(inchesAt) == '-') inchesAt = SkipSpaces(inchesAt + 1);
        var next = inchesAt;
        if (!TryReadQuantity(ref next, out var inches)) return Error is null;
        var isMarked = LengthUnitMark.TryRead(text, next, out var unit, out var end);

        // Without its mark the number may be the next of several sizes, except where nothing follows.
        if (isMarked ? unit != LengthUnitMark.Inch : !(wholeText && SkipWhiteSpace(next) == text.Length)) return Hint(SkipSpaces(next), Messages.AnInchMark);
        if (inches.Whole >= 12 || inches.Numerator >= 12 * inches.Denominator) return Hint(inchesAt, Messages.InchesBelowTwelve);
        if (!inches.TryGetPicometres(LengthUnitMark.Inch, out var added)) return Fail(inchesAt, Messages.WholePicometres);
        picometres += added;
        at = isMarked ? end : next;
        return true;
    }

    private bool TryReadQuantity(ref int at, out LengthQuantity quantity)
    {
        quantity = default;
        if (TryReadFraction(ref at, out quantity)) return true;
        if (Error is not null) return false;
        if (Peek(at) == '.' && IsDigit(at + 1)) return TryReadDecimals(0, ref at, out quantity) && NumberEnds(at);
        if (!IsDigit(at)) return false;
        if (!TryReadDigits(ref at, out var whole)) return false;
        if (IsDecimalMark(at)) return TryReadDecimals(whole, ref at, out quantity) && NumberEnds(at);
        quantity = LengthQuantity.OfWhole(whole);
        if (!NumberEnds(at)) return false;

        // Within other text 0-1/2 is a stretch: nobody writes half an inch that way.
        if (!wholeText && whole == 0 && Peek(at) == '-') return true;
        var fractionAt = Peek(at) == '-' ? at + 1 : SkipSpaces(at);
        var next = fractionAt;
        if (!TryReadFraction(ref next, out var fraction)) return Error is null;
        if (fraction.Numerator >= fraction.Denominator) return Hint(fractionAt, Messages.FractionBelowOne);
        quantity = fraction with { Whole = whole };
        at = next;
        return true;
    }

    // 3/8 or ¾. Digits without a stroke are no fraction and no error.
    private bool TryReadFraction(ref int at, out LengthQuantity quantity)
    {
        quantity = default;
        if (at < text.Length && LengthCharacters.TryGetFraction(text[at], out var upper, out var lower))
        {
            quantity = LengthQuantity.OfFraction(0, upper, lower);
            at++;
            return NumberEnds(at);
        }

        var stroke = at;
        while (IsDigit(stroke)) stroke++;
        if (stroke == at || Peek(stroke) != '/') return false;
        var next = stroke + 1;
        if (!IsDigit(next)) return Fail(next, Messages.ADenominator);
        if (!TryReadDigits(ref at, out var numerator) || !TryReadDigits(ref next, out var denominator)) return false;
        if (denominator == 0) return Fail(stroke + 1, Messages.DenominatorAboveZero);
        quantity = LengthQuantity.OfFraction(0, numerator, denominator);
        at = next;
        return NumberEnds(at);
    }

    // A comma between digits is a decimal mark, unless more commas or a fraction make it a list.
    private readonly bool IsDecimalMark(int at)
    {
        if (!IsDigit(at + 1) || Peek(at) is not ('.' or ',')) return false;
        if (Peek(at) == '.') return true;
        var end = at + 1;
        while (IsDigit(end)) end++;
        return Peek(end) != '/' && !(Peek(end) == ',' && IsDigit(end + 1));
    }

    private bool TryReadDecimals(Int128 whole, ref int at, out LengthQuantity quantity)
    {
        quantity = default;
        var mark = at++;
        var first = at;
        while (IsDigit(at)) at++;

        // 1,200 is twelve hundred to one reader and one and a fifth to another.
        if (Peek(mark) == ',' && at - first == 3 && whole != 0) return Fail(mark, Messages.NoThousandsMark);
        var end = at;
        while (end > first && Peek(end - 1) == '0') end--;

        // No unit has more than 12 decimals of whole picometres.
        const int MostDecimals = 18;
        if (end - first > MostDecimals) return Fail(first, Messages.WholePicometres);
        Int128 numerator = 0, denominator = 1;
        for (var i = first; i < end; i++, denominator *= 10) numerator = numerator * 10 + (Peek(i) - '0');
        quantity = LengthQuantity.OfDecimal(whole, numerator, denominator);
        return true;
    }

    private bool TryReadDigits(ref int at, out Int128 number)
    {
        Int128 most = long.MaxValue;
        var start = at;
        number = 0;
        for (; IsDigit(at); at++)
        {
            number = number * 10 + (Peek(at) - '0');
            if (number > most) return Fail(start, Messages.LengthInRange);
        }

        return true;
    }

    // 3/8/2, 3/8.5, 1.5/8 and 1.2.3 are no numbers, and reading a part of them would be a guess.
    private bool NumberEnds(int at) => Peek(at) == '/' || (Peek(at) == '.' && IsDigit(at + 1)) ? Fail(at, Messages.NumberEnd) : true;

    private bool Fail(int position, string expected)
    {
        Error = new(position, LengthCharacters.FoundAt(text, position), expected);
        return false;
    }

    // Not part of this length, but if nothing else makes sense of it, this is why. True: what was read so far stands.
    private bool Hint(int position, string expected)
    {
        (hintPosition, hintExpected) = (position, expected);
        return true;
    }

    private readonly char Peek(int at) => at < text.Length ? LengthCharacters.Fold(text[at]) : '\0';

    private readonly bool IsDigit(int at) => char.IsAsciiDigit(Peek(at));

    private readonly int SkipSpaces(int at)
    {
        while (Peek(at) == ' ') at++;
        return at;
    }

    private readonly int SkipWhiteSpace(int at)
    {
        while (at < text.Length && char.IsWhiteSpace(text[at])) at++;
        return at;
    }
}
