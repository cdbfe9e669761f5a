namespace Scrapwright.Core.Measures;

/// <summary>Customary units in those of the SI, for makers who measure in inches. All but the psi exact by definition.</summary>
public static class CustomaryUnits
{
    /// <summary>Mass of a pound. [kg]; international avoirdupois pound</summary>
    public const double KilogramsPerPound = 0.45359237;

    /// <summary>Ounces in a pound. [1]</summary>
    public const int OuncesPerPound = 16;

    /// <summary>Mass of an ounce. [g]; a sixteenth of a pound</summary>
    public const double GramsPerOunce = 28.349523125;

    /// <summary>Volume of a fluid ounce. [ml]; United States</summary>
    public const double MillilitresPerFluidOunce = 29.5735295625;

    /// <summary>Force of a pound-force. [N]; a pound at 9.80665 m/s²</summary>
    public const double NewtonsPerPoundForce = 4.4482216152605;

    /// <summary>Pressure of a pound-force per square inch. [kPa], to seven digits</summary>
    public const double KilopascalsPerPsi = 6.894757;

    /// <summary>A temperature in °F.</summary>
    /// <param name="temperatureCelsius">[°C]</param>
    public static double Fahrenheit(double temperatureCelsius) => (temperatureCelsius * 9 / 5) + 32;
}
