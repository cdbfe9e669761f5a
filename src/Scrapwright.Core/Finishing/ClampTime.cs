namespace Scrapwright.Core.Finishing;

/// <summary>How long a glue-up stays in the clamps at a temperature, or that it is too cold to glue.</summary>
public abstract record ClampTime
{
    /// <summary>Temperature that tables of glues are made for, 70 °F. [°C]; common practice, no source</summary>
    public const double TableCelsius = 21;

    // Warmer than this no clamp time is counted shorter: estimate.
    private const double WarmestCelsius = 35;

    private ClampTime()
    {
    }

    /// <summary>It sets.</summary>
    /// <param name="OpenMinutes">From the first glue spread to the joint closed. [min]</param>
    /// <param name="ClampMinutes">In the clamps, joint not under stress. [min], whole five minutes</param>
    /// <param name="CureHours">Until it may be worked hard. [h]</param>
    /// <param name="IsCool">True below the least temperature that some makers ask for.</param>
    public sealed record Sets(Band OpenMinutes, Band ClampMinutes, Band CureHours, bool IsCool) : ClampTime;

    /// <summary>It would not set well.</summary>
    /// <param name="MinimumCelsius">What glue, wood and air need. [°C]</param>
    public sealed record TooCold(int MinimumCelsius) : ClampTime;

    /// <summary>The times of a glue at a temperature.</summary>
    /// <param name="glue">The glue.</param>
    /// <param name="temperatureCelsius">Glue, wood and air alike. [°C], finite</param>
    /// <remarks>
    /// All times halve for every 10 °C more and double for every 10 °C less than 21 °C. [TenDegreeRule] says so of glues that set by a reaction; that it holds for
    /// glues that set by losing water is an estimate. Nothing counts shorter above 35 °C. The label comes first.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite temperature.</exception>
    public static ClampTime At(Glue glue, double temperatureCelsius)
    {
        ArgumentNullException.ThrowIfNull(glue);
        if (!double.IsFinite(temperatureCelsius)) throw new ArgumentOutOfRangeException(nameof(temperatureCelsius), temperatureCelsius, "A temperature is a number.");
        if (temperatureCelsius < glue.MinimumCelsius.Least) return new TooCold(glue.MinimumCelsius.Least);
        var factor = Factor(temperatureCelsius);
        return new Sets(
            Open(glue.OpenMinutes, factor),
            Band.Around(glue.ClampMinutes.Least * factor, glue.ClampMinutes.Most * factor, 5),
            Band.Around(glue.CureHours.Least * factor, glue.CureHours.Most * factor),
            temperatureCelsius < glue.MinimumCelsius.Most);
    }

    /// <summary>How many times as long everything takes as at 21 °C. [1]</summary>
    /// <param name="temperatureCelsius">[°C]</param>
    internal static double Factor(double temperatureCelsius) => Math.Pow(2, (TableCelsius - Math.Min(temperatureCelsius, WarmestCelsius)) / 10);

    // Both ends rounded down: nobody shall count on a minute that is not there. A billionth short of one is a slip of the arithmetic: our own choice.
    private static Band Open(Band minutes, double factor) => new((int)((minutes.Least * factor) + 1e-9), (int)((minutes.Most * factor) + 1e-9));
}
