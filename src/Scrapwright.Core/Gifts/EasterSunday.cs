namespace Scrapwright.Core.Gifts;

/// <summary>The date of Easter Sunday in the Gregorian calendar, as the western churches keep it.</summary>
public static class EasterSunday
{
    /// <summary>Easter Sunday of a year.</summary>
    /// <param name="year">The year, 1 to 9999; the rule is of 1582 and reckons earlier years as if they had it.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such year.</exception>
    /// <remarks>
    /// The anonymous Gregorian rule of 1876, Butcher's Ecclesiastical Calendar, as H. V. Smith gives it in Mathematical Spectrum 11 (1978/79), 23-24, quoted at
    /// https://www.w3.org/2000/10/swap/test/easter/ (seen 2026-11). Its numbers are its own; names say what they stand for.
    /// </remarks>
    public static DateOnly Of(int year)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(year, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(year, 9999);
        var yearOfMoon = year % 19;
        var (century, yearOfCentury) = Math.DivRem(year, 100);
        var (leapCenturies, centuryRest) = Math.DivRem(century, 4);
        var moonShift = (century - ((century + 8) / 25) + 1) / 3;
        var fullMoon = ((19 * yearOfMoon) + century - leapCenturies - moonShift + 15) % 30;
        var (leapYears, yearRest) = Math.DivRem(yearOfCentury, 4);
        var toSunday = (32 + (2 * centuryRest) + (2 * leapYears) - fullMoon - yearRest) % 7;
        var correction = (yearOfMoon + (11 * fullMoon) + (22 * toSunday)) / 451;
        var (month, day) = Math.DivRem(fullMoon + toSunday - (7 * correction) + 114, 31);
        return new DateOnly(year, month, day + 1);
    }
}
