using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Wood;

/// <summary>How long wood takes to settle in new air. An estimate: real boards differ by a factor of two from it, either way.</summary>
public static class Acclimatisation
{
    // Share reached up to which the law for short times is used: there it and the series agree within 10⁻⁸. Our own choice.
    private const double ShortFourierNumber = 0.05;

    // Our own choice: a term below this changes no digit of a double near one.
    private const double Negligible = 1e-17;

    // Transverse diffusion coefficient of wood of specific gravity 0.5 at room temperature and about 10 % moisture, and how fast it falls as wood gets denser: estimate.
    private const double DiffusionM2PerS = 1e-10, DiffusionFall = 5, MiddleSpecificGravity = 0.5;

    // Estimate: between boards, and from what a still room's air hinders.
    private const double UncertaintyFactor = 2;

    /// <summary>Share of a moisture change that a board has made, open to the air on both faces.</summary>
    /// <param name="fourierNumber">D·t/l², l half the thickness. [1], 0 and more</param>
    /// <returns>Mean change over the final change. [1], 0 to 1</returns>
    /// <remarks>
    /// E = 1 − Σ 8/((2n+1)²π²) · exp(−(2n+1)²π²·Fo/4): a plane sheet whose faces take the new moisture at once and whose coefficient is constant; at the start E = 2·√(Fo/π).
    /// Source: [Crank1975], diffusion in a plane sheet; from memory, checked against its known value E = 0.9 at Fo = 0.848.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not a number.</exception>
    public static double ShareReached(double fourierNumber)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(fourierNumber);
        ThrowIfNaN(fourierNumber, nameof(fourierNumber));
        if (fourierNumber < ShortFourierNumber)
        {
            return 2 * Math.Sqrt(fourierNumber / Math.PI);
        }

        // [Crank1975], as above; terms fall so fast that few are needed.
        double left = 0, term = 1;
        for (int odd = 1; term > Negligible; odd += 2)
        {
            double k = odd * odd * Math.PI * Math.PI;
            term = 8 / k * Math.Exp(-k * fourierNumber / 4);
            left += term;
        }

        return 1 - left;
    }

    /// <summary>The Fourier number at which a share of the change is made: the inverse of <see cref="ShareReached"/>.</summary>
    /// <param name="sharePercent">Share of the change. [%], above 0 and below 100</param>
    /// <returns>D·t/l², l half the thickness. [1]; 0.848 at 90 %</returns>
    /// <remarks>[Crank1975], by Newton's method.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Not between 0 and 100.</exception>
    public static double FourierNumber(double sharePercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(sharePercent);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(sharePercent, 100);
        ThrowIfNaN(sharePercent, nameof(sharePercent));

        // From half of the change on the first term alone is near enough to begin with, below it the law for short times; Newton's steps then double the digits each time.
        // Our own choice: six steps leave none to win.
        double share = sharePercent / 100;
        double fourierNumber = share < 0.5 ? share * share * Math.PI / 4 : -4 / (Math.PI * Math.PI) * Math.Log((1 - share) * Math.PI * Math.PI / 8);
        for (int step = 0; step < 6; step++)
        {
            fourierNumber -= (ShareReached(fourierNumber) - share) / SharePerFourierNumber(fourierNumber);
        }

        return fourierNumber;
    }

    /// <summary>Days a board of a species needs in a room to make a share of its moisture change, unfinished, with air on both faces.</summary>
    /// <param name="species">The wood: the denser, the slower.</param>
    /// <param name="thickness">Thickness of the board, above zero; half of it is the way water goes.</param>
    /// <param name="sharePercent">Share of the change asked for. [%], above 0 and below 100; 90 is near enough for gluing up.</param>
    /// <returns>An estimate with its range. Its square law is sound: twice as thick takes four times as long.</returns>
    /// <remarks>t = Fo·l²/D, with D = 10⁻¹⁰ · exp(−5·(G − 0.5)) m²/s, G the specific gravity at 12 %: estimate. The ends of the board and the still air at its faces are left out. A finish, a stack without stickers or a cold shop slow it down.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">No thickness, or a share outside the range.</exception>
    public static AcclimatisationTime DaysEstimate(Species species, Length thickness, double sharePercent = 90)
    {
        ArgumentNullException.ThrowIfNull(species);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(thickness, Length.Zero);
        double days = FourierNumber(sharePercent) * DaysPerFourierNumber(species, thickness);
        return new AcclimatisationTime(days, days / UncertaintyFactor, days * UncertaintyFactor);
    }

    /// <summary>Share of a moisture change that a board has made after some days: the same estimate, the other way round.</summary>
    /// <param name="species">The wood.</param>
    /// <param name="thickness">Thickness of the board, above zero.</param>
    /// <param name="afterDays">Time in the new air. [d], 0 and more</param>
    /// <returns>Share of the change. [%], 0 to 100; estimate</returns>
    /// <exception cref="ArgumentOutOfRangeException">No thickness, or negative days.</exception>
    public static double SharePercentEstimate(Species species, Length thickness, double afterDays)
    {
        ArgumentNullException.ThrowIfNull(species);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(thickness, Length.Zero);
        ArgumentOutOfRangeException.ThrowIfNegative(afterDays);
        return ShareReached(afterDays / DaysPerFourierNumber(species, thickness)) * 100;
    }

    // The slope of the share: the derivative of [Crank1975]'s two laws.
    private static double SharePerFourierNumber(double fourierNumber)
    {
        if (fourierNumber < ShortFourierNumber)
        {
            return 1 / Math.Sqrt(Math.PI * fourierNumber);
        }

        double slope = 0, term = 1;
        for (int odd = 1; term > Negligible; odd += 2)
        {
            term = 2 * Math.Exp(-(odd * odd) * Math.PI * Math.PI * fourierNumber / 4);
            slope += term;
        }

        return slope;
    }

    // Definition: 86,400 seconds a day, 10⁻³ metres a millimetre. The coefficient is an estimate, see above.
    private static double DaysPerFourierNumber(Species species, Length thickness)
    {
        double halfM = thickness.Millimetres / 2 / 1000;
        double diffusionM2PerS = DiffusionM2PerS * Math.Exp(-DiffusionFall * (species.SpecificGravity12 - MiddleSpecificGravity));
        return halfM * halfM / diffusionM2PerS / 86_400;
    }

    private static void ThrowIfNaN(double value, string name)
    {
        if (double.IsNaN(value))
        {
            throw new ArgumentOutOfRangeException(name, value, "A number is needed.");
        }
    }
}
