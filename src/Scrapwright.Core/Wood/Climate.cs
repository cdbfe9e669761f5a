using System.Collections.Immutable;

namespace Scrapwright.Core.Wood;

/// <summary>A year's air where wood stands, month by month, and the moisture that wood settles at in it.</summary>
/// <remarks>Months are means; wood thicker than a veneer follows them late and less. Preset climates are of the northern hemisphere: for the southern, January stands for July.</remarks>
public sealed record Climate
{
    // Definition.
    private const int MonthsInAYear = 12;

    // Our own choice: hotter is no home and no shed, but a slip of the pen.
    private const double HottestCelsius = 60;

    private readonly ImmutableArray<ClimateMonth> months;

    /// <summary>Stable name for files: lower case with hyphens. An own climate's is its name.</summary>
    public required string Key { get; init; }

    /// <summary>Name on screens.</summary>
    public required string Title { get; init; }

    /// <summary>One line: where that is.</summary>
    public required string Summary { get; init; }

    /// <summary>The air where the wood stands, January first: twelve months, each with a humidity of 0 to 100 % and a temperature of at most 60 °C.</summary>
    /// <exception cref="ArgumentException">Not twelve months, or a value outside that.</exception>
    public required ImmutableArray<ClimateMonth> Months
    {
        get => months;
        init => months = AreMonthsOfAYear(value)
            ? value
            : throw new ArgumentException("A climate has twelve months, each with 0 to 100 % humidity and at most 60 °C.", nameof(value));
    }

    /// <summary>Where the months come from.</summary>
    public required ValueSource Source { get; init; }

    /// <summary>Moisture content in the driest month. [%]</summary>
    public double DriestPercent => Enumerable.Range(1, MonthsInAYear).Min(MoisturePercent);

    /// <summary>Moisture content in the dampest month. [%]</summary>
    public double DampestPercent => Enumerable.Range(1, MonthsInAYear).Max(MoisturePercent);

    /// <summary>Mean moisture content of the twelve months: what thick wood stays near. [%]</summary>
    public double MeanPercent => Enumerable.Range(1, MonthsInAYear).Average(MoisturePercent);

    /// <summary>The moisture content that wood settles at in one month's air.</summary>
    /// <param name="month">1 for January to 12 for December.</param>
    /// <returns>Equilibrium moisture content. [%], not rounded; a whole per cent is about what it is worth.</returns>
    /// <remarks>[WoodHandbook], eq. 4-5. A month colder than −1.1 °C, where its table begins, counts as −1.1 °C: at 70 % humidity that changes the result by about 0.1 % for ten degrees.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">No such month.</exception>
    public double MoisturePercent(int month)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(month, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(month, MonthsInAYear);
        ClimateMonth air = Months[month - 1];
        return EquilibriumMoisture.Percent(Math.Max(air.TemperatureCelsius, -1.1), air.RelativeHumidityPercent);
    }

    /// <summary>Whether these can be a climate's <see cref="Months"/>.</summary>
    /// <param name="months">The months to look at; may be <c>default</c>.</param>
    public static bool AreMonthsOfAYear(ImmutableArray<ClimateMonth> months) =>
        !months.IsDefault && months.Length == MonthsInAYear && months.All(air => air.TemperatureCelsius <= HottestCelsius && air.RelativeHumidityPercent is >= 0 and <= 100);

    /// <summary>The title.</summary>
    public override string ToString() => Title;
}
