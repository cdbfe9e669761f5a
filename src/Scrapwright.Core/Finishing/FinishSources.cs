using System.Collections.Immutable;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Finishing;

/// <summary>The sources of every figure of a finish; several where the band spans what they say.</summary>
public sealed record FinishSources
{
    /// <summary>Sources of <see cref="Finish.Coats"/>.</summary>
    public required ImmutableArray<ValueSource> Coats { get; init; }

    /// <summary>Sources of <see cref="Finish.CoverageM2PerLitre"/>.</summary>
    public required ImmutableArray<ValueSource> Coverage { get; init; }

    /// <summary>Sources of <see cref="Finish.RecoatMinutes"/>.</summary>
    public required ImmutableArray<ValueSource> Recoat { get; init; }

    /// <summary>Sources of <see cref="Finish.HandleHours"/>.</summary>
    public required ImmutableArray<ValueSource> Handle { get; init; }

    /// <summary>Sources of <see cref="Finish.FoodDays"/>.</summary>
    public required ImmutableArray<ValueSource> Food { get; init; }

    /// <summary>Sources of <see cref="Finish.CureDays"/>.</summary>
    public required ImmutableArray<ValueSource> Cure { get; init; }

    /// <summary>Sources of <see cref="Finish.TemperatureCelsius"/>.</summary>
    public required ImmutableArray<ValueSource> Temperature { get; init; }

    /// <summary>Sources of <see cref="Finish.LastGrit"/>.</summary>
    public required ImmutableArray<ValueSource> LastGrit { get; init; }

    /// <summary>All of them.</summary>
    public IEnumerable<ValueSource> All => [.. Coats, .. Coverage, .. Recoat, .. Handle, .. Food, .. Cure, .. Temperature, .. LastGrit];
}
