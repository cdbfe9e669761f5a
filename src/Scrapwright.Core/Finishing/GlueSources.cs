using System.Collections.Immutable;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Finishing;

/// <summary>The sources of every figure of a glue; several where the band spans what they say.</summary>
public sealed record GlueSources
{
    /// <summary>Sources of <see cref="Glue.Water"/>.</summary>
    public required ImmutableArray<ValueSource> Water { get; init; }

    /// <summary>Sources of <see cref="Glue.OpenMinutes"/>.</summary>
    public required ImmutableArray<ValueSource> Open { get; init; }

    /// <summary>Sources of <see cref="Glue.ClampMinutes"/>.</summary>
    public required ImmutableArray<ValueSource> Clamp { get; init; }

    /// <summary>Sources of <see cref="Glue.CureHours"/>.</summary>
    public required ImmutableArray<ValueSource> Cure { get; init; }

    /// <summary>Sources of <see cref="Glue.MinimumCelsius"/>.</summary>
    public required ImmutableArray<ValueSource> Minimum { get; init; }

    /// <summary>Sources of <see cref="Glue.SpreadGramsPerM2"/>.</summary>
    public required ImmutableArray<ValueSource> Spread { get; init; }

    /// <summary>Sources of <see cref="Glue.LowKilopascals"/>.</summary>
    public required ImmutableArray<ValueSource> Low { get; init; }

    /// <summary>Sources of <see cref="Glue.MediumKilopascals"/>.</summary>
    public required ImmutableArray<ValueSource> Medium { get; init; }

    /// <summary>Sources of <see cref="Glue.HighKilopascals"/>.</summary>
    public required ImmutableArray<ValueSource> High { get; init; }

    /// <summary>All of them.</summary>
    public IEnumerable<ValueSource> All => [.. Water, .. Open, .. Clamp, .. Cure, .. Minimum, .. Spread, .. Low, .. Medium, .. High];
}
