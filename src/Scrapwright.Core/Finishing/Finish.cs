namespace Scrapwright.Core.Finishing;

/// <summary>A kind of finish, no brand. Figures are bands where makers and sources differ; the label of the tin comes first.</summary>
public sealed record Finish
{
    /// <summary>Stable name for files, for example <c>drying-oil</c>.</summary>
    public required string Key { get; init; }

    /// <summary>Name on screens and paper.</summary>
    public required string Name { get; init; }

    /// <summary>True when it hardens by taking up oxygen and its wet rags heat up by themselves.</summary>
    public required bool IsDryingOil { get; init; }

    /// <summary>How it goes on.</summary>
    public required FinishMethod Method { get; init; }

    /// <summary>How many coats.</summary>
    public required int Coats { get; init; }

    /// <summary>Area that one litre covers once. [m²/L]</summary>
    public required Band CoverageM2PerLitre { get; init; }

    /// <summary>Until the next coat, at 21 °C. [min]</summary>
    public required Band RecoatMinutes { get; init; }

    /// <summary>After the last coat, until it may be handled. [h]</summary>
    public required Band HandleHours { get; init; }

    /// <summary>After the last coat, until food may touch it. [d]</summary>
    public required Band FoodDays { get; init; }

    /// <summary>After the last coat, until it is as hard as it gets. [d]; 0 for what never hardens.</summary>
    public required Band CureDays { get; init; }

    /// <summary>Coldest and warmest air to put it on in. [°C]</summary>
    public required Band TemperatureCelsius { get; init; }

    /// <summary>Grit of the last sanding before the first coat.</summary>
    public required Grit LastGrit { get; init; }

    /// <summary>Whether and when food may touch it.</summary>
    public required string Food { get; init; }

    /// <summary>What else to mind.</summary>
    public required string Note { get; init; }

    /// <summary>Where each figure comes from.</summary>
    public required FinishSources Sources { get; init; }

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
