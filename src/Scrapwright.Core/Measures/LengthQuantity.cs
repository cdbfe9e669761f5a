namespace Scrapwright.Core.Measures;

/// <summary>A number as written: whole, decimal, fraction or both. The fraction is below 1 if there is a whole number.</summary>
internal readonly record struct LengthQuantity(Int128 Whole, Int128 Numerator, Int128 Denominator, LengthQuantity.Form Written)
{
    internal enum Form
    {
        Whole,
        Decimal,
        Fraction,
    }

    public static LengthQuantity OfWhole(Int128 whole) => new(whole, 0, 1, Form.Whole);

    public static LengthQuantity OfFraction(Int128 whole, Int128 numerator, Int128 denominator) => new(whole, numerator, denominator, Form.Fraction);

    public static LengthQuantity OfDecimal(Int128 whole, Int128 numerator, Int128 denominator) => new(whole, numerator, denominator, Form.Decimal);

    /// <summary>How many picometres, if that is a whole number. No overflow: a reader gives at most 20 digits to each part.</summary>
    public bool TryGetPicometres(LengthUnitMark unit, out Int128 picometres)
    {
        var (fraction, rest) = Int128.DivRem(Numerator * unit.Picometres, Denominator);
        picometres = Whole * unit.Picometres + fraction;
        return rest == 0;
    }
}
