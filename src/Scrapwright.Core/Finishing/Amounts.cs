using System.Globalization;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Finishing;

/// <summary>Amounts of glue, finish, time and pressure as makers read them: in an inch shop ounces stand beside grams and psi instead of MPa.</summary>
public static class Amounts
{
    /// <summary>A mass: <c>8–14 g</c>, in an inch shop <c>8–14 g (0.3–0.5 oz)</c>.</summary>
    /// <param name="grams">[g]</param>
    /// <param name="unit">The shop's unit of length.</param>
    public static string Grams(Band grams, LengthUnit unit) => Beside($"{grams} g", grams, CustomaryUnits.GramsPerOunce, "oz", unit);

    /// <summary>A volume: <c>40–60 ml</c>, in an inch shop with US fluid ounces beside.</summary>
    /// <param name="millilitres">[ml]</param>
    /// <param name="unit">The shop's unit of length.</param>
    public static string Millilitres(Band millilitres, LengthUnit unit) => Beside($"{millilitres} ml", millilitres, CustomaryUnits.MillilitresPerFluidOunce, "fl oz", unit);

    /// <summary>A pressure: <c>0.7–1.0 MPa</c>, in an inch shop <c>100–150 psi</c>. Steps are our own choice.</summary>
    /// <param name="kilopascals">[kPa]; shown to the nearest 5 psi or 0.1 MPa.</param>
    /// <param name="unit">The shop's unit of length.</param>
    public static string Pressure(Band kilopascals, LengthUnit unit) => unit == LengthUnit.Inch
        ? $"{Span(kilopascals, k => Number(5 * Math.Round(k / CustomaryUnits.KilopascalsPerPsi / 5), "0"))} psi"
        : $"{Span(kilopascals, k => Number(k / 1000d, "0.0"))} MPa";

    /// <summary>A force: <c>8–19 kN</c>, in an inch shop <c>1800–4250 lbf</c>. Steps are our own choice.</summary>
    /// <param name="newtons">[N]; shown to the nearest 50 lbf or 0.5 kN.</param>
    /// <param name="unit">The shop's unit of length.</param>
    public static string Force(Band newtons, LengthUnit unit) => unit == LengthUnit.Inch
        ? $"{Span(newtons, n => Number(50 * Math.Round(n / CustomaryUnits.NewtonsPerPoundForce / 50), "0"))} lbf"
        : $"{Span(newtons, n => Number(Math.Round(n / 500d) / 2, "0.#"))} kN";

    /// <summary>A temperature to the nearest degree: <c>21 °C</c>, in an inch shop <c>70 °F</c>.</summary>
    /// <param name="temperatureCelsius">[°C]</param>
    /// <param name="unit">The shop's unit of length.</param>
    public static string Temperature(double temperatureCelsius, LengthUnit unit) => unit == LengthUnit.Inch
        ? $"{Number(CustomaryUnits.Fahrenheit(temperatureCelsius), "0")} °F"
        : $"{Number(temperatureCelsius, "0")} °C";

    /// <summary>An area: <c>470 cm²</c>, in an inch shop <c>73 in²</c>; from 1 m² on <c>1.2 m²</c>, from 4 ft² on <c>13 ft²</c>. Units by definition; where one goes over to the next is our own choice.</summary>
    /// <param name="area">The area.</param>
    /// <param name="unit">The shop's unit of length.</param>
    public static string Area(Area area, LengthUnit unit)
    {
        var squareMm = area.SquareMillimetres;
        var squareInches = squareMm / (25.4 * 25.4);
        return unit == LengthUnit.Inch
            ? squareInches < 576 ? $"{Number(squareInches, "0")} in²" : $"{Number(squareInches / 144, "0.#")} ft²"
            : squareMm < 1e6 ? $"{Number(squareMm / 100, "0")} cm²" : $"{Number(squareMm / 1e6, "0.#")} m²";
    }

    /// <summary>Minutes as people say them: <c>30–60 min</c>, <c>12–24 h</c>, <c>1–2 days</c>. Where the unit changes is our own choice.</summary>
    /// <param name="minutes">[min]</param>
    public static string Minutes(Band minutes) => (minutes.Least, minutes.Most) switch
    {
        (_, < 120) => $"{minutes} min",
        var (least, most) when least >= 60 => Hours(Band.Around(least / 60d, most / 60d)),
        var (least, most) => $"{least} min to {Hours(Band.Around(most / 60d, most / 60d))}",
    };

    /// <summary>Hours as people say them: <c>6–24 h</c>, <c>1–7 days</c>. Where the unit changes is our own choice.</summary>
    /// <param name="hours">[h]</param>
    public static string Hours(Band hours) => hours.Most >= 48 && hours.Least >= 24
        ? Days(Band.Around(hours.Least / 24d, hours.Most / 24d))
        : hours is { Most: > 72, Least: < 24 } ? $"{hours.Least} h to {Days(Band.Around(hours.Most / 24d, hours.Most / 24d))}" : $"{hours} h";

    /// <summary>Days: <c>1 day</c>, <c>7–30 days</c>.</summary>
    /// <param name="days">[d]</param>
    public static string Days(Band days) => days is { IsOne: true, Least: 1 } ? "1 day" : $"{days} days";

    // Less than a tenth of an ounce is no figure a scale shows: our own choice.
    private static string Beside(string text, Band amount, double perOunce, string ounce, LengthUnit unit) => unit == LengthUnit.Inch
        ? $"{text} ({(amount.Least / perOunce < 0.05 ? $"up to {Ounces(Math.Max(0.1, amount.Most / perOunce))}" : Span(amount, a => Ounces(a / perOunce)))} {ounce})"
        : text;

    // A tenth of an ounce is what kitchen scales and measuring cups show; from ten on whole ones: our own choice.
    private static string Ounces(double ounces) => Number(ounces, ounces < 9.95 ? "0.0" : "0");

    private static string Span(Band band, Func<int, string> text)
    {
        var (least, most) = (text(band.Least), text(band.Most));
        return least == most ? least : $"{least}–{most}";
    }

    private static string Number(double number, string format) => number.ToString(format, CultureInfo.InvariantCulture);
}
