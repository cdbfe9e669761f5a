namespace Scrapwright.Core.Finishing;

/// <summary>A kind of glue, no brand. Figures are bands where makers and sources differ; the label of the bottle comes first.</summary>
public sealed record Glue
{
    /// <summary>Stable name for files, for example <c>white-glue</c>.</summary>
    public required string Key { get; init; }

    /// <summary>Name on screens and paper.</summary>
    public required string Name { get; init; }

    /// <summary>What wet it stands.</summary>
    public required string Water { get; init; }

    /// <summary>From the first glue spread to the joint closed, at 21 °C. [min]</summary>
    public required Band OpenMinutes { get; init; }

    /// <summary>In the clamps at 21 °C, joint not under stress. [min]</summary>
    public required Band ClampMinutes { get; init; }

    /// <summary>Until it may be worked hard, at 21 °C. [h]</summary>
    public required Band CureHours { get; init; }

    /// <summary>Coldest air, wood and glue. [°C]; sources differ, below the lower figure none allows it.</summary>
    public required Band MinimumCelsius { get; init; }

    /// <summary>Glue on one glue line. [g/m²]</summary>
    public required Band SpreadGramsPerM2 { get; init; }

    /// <summary>Pressure on woods of low density. [kPa]</summary>
    public required Band LowKilopascals { get; init; }

    /// <summary>Pressure on woods of medium density. [kPa]</summary>
    public required Band MediumKilopascals { get; init; }

    /// <summary>Pressure on woods of high density. [kPa]</summary>
    public required Band HighKilopascals { get; init; }

    /// <summary>What to do with oily wood.</summary>
    public required string Oily { get; init; }

    /// <summary>What to do with end grain.</summary>
    public required string EndGrain { get; init; }

    /// <summary>Washing and food.</summary>
    public required string Food { get; init; }

    /// <summary>Where each figure comes from.</summary>
    public required GlueSources Sources { get; init; }

    /// <summary>Pressure on woods of a class. [kPa]</summary>
    /// <exception cref="ArgumentOutOfRangeException">No such class.</exception>
    public Band Kilopascals(DensityClass density) => density switch
    {
        DensityClass.Low => LowKilopascals,
        DensityClass.Medium => MediumKilopascals,
        DensityClass.High => HighKilopascals,
        _ => throw new ArgumentOutOfRangeException(nameof(density), density, "Low, Medium or High."),
    };

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
