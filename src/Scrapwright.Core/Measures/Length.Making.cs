namespace Scrapwright.Core.Measures;

public readonly partial record struct Length
{
    /// <summary>A length of whole picometres. [pm]</summary>
    public static Length FromPicometres(long picometres) => new(picometres);

    /// <summary>A length of whole micrometres. [µm]</summary>
    /// <exception cref="OverflowException">Out of range.</exception>
    public static Length FromMicrometres(long micrometres) => new(micrometres * PicometresPerMicrometre);

    /// <summary>A length of whole millimetres. [mm]</summary>
    /// <exception cref="OverflowException">Out of range.</exception>
    public static Length FromMillimetres(long millimetres) => new(millimetres * PicometresPerMillimetre);

    /// <summary>A length of whole inches. [in]</summary>
    /// <exception cref="OverflowException">Out of range.</exception>
    public static Length FromInches(long whole) => new(whole * PicometresPerInch);

    /// <summary>An exact fraction of an inch: <c>FromInches(3, 8)</c> is 3/8 in. [in]</summary>
    /// <param name="numerator">Upper number, of either sign.</param>
    /// <param name="denominator">Lower number, above zero; any power of two up to 512 is always exact.</param>
    /// <exception cref="ArgumentException">The denominator is not positive, or the fraction is not a whole number of picometres.</exception>
    /// <exception cref="OverflowException">Out of range.</exception>
    public static Length FromInches(long numerator, long denominator)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(denominator);
        var (picometres, rest) = Int128.DivRem((Int128)numerator * PicometresPerInch, denominator);
        if (rest != 0)
            throw new ArgumentException($"{numerator}/{denominator} in is not a whole number of picometres. Maybe FromInchesRounded.", nameof(denominator));
        return new((long)picometres);
    }

    /// <summary>A length of whole feet, 12 in each. [ft]</summary>
    /// <exception cref="OverflowException">Out of range.</exception>
    public static Length FromFeet(long feet) => new(feet * (12 * PicometresPerInch));

    /// <summary>The whole number of picometres next to a floating value; where physics comes back to lengths.</summary>
    /// <param name="millimetres">Finite; read to 15 significant digits, so that 0.1 means one tenth. [mm]</param>
    /// <param name="rounding">Where a value between two picometres goes.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not finite, or out of range.</exception>
    public static Length FromMillimetresRounded(double millimetres, Rounding rounding = Rounding.Nearest) =>
        FromRounded(millimetres, PicometresPerMillimetre, rounding, nameof(millimetres));

    /// <summary>The whole number of picometres next to a floating value.</summary>
    /// <param name="inches">Finite; read to 15 significant digits, so that 0.1 means one tenth. [in]</param>
    /// <param name="rounding">Where a value between two picometres goes.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not finite, or out of range.</exception>
    public static Length FromInchesRounded(double inches, Rounding rounding = Rounding.Nearest) =>
        FromRounded(inches, PicometresPerInch, rounding, nameof(inches));

    private static Length FromRounded(double units, long picometresPerUnit, Rounding rounding, string name)
    {
        // Also false for NaN.
        if (!(Math.Abs(units) < (double)long.MaxValue / picometresPerUnit))
            throw new ArgumentOutOfRangeException(name, units, "A length is finite and within about ±9,223 km.");
        var picometres = (decimal)units * picometresPerUnit;
        return new((long)(rounding switch
        {
            Rounding.Down => decimal.Floor(picometres),
            Rounding.Up => decimal.Ceiling(picometres),
            Rounding.Nearest => decimal.Round(picometres, MidpointRounding.AwayFromZero),
            _ => throw new ArgumentOutOfRangeException(nameof(rounding), rounding, "Down, Up or Nearest."),
        }));
    }
}
