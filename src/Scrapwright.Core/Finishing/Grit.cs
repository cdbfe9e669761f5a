using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Finishing;

/// <summary>How fine an abrasive is.</summary>
public sealed record Grit
{
    /// <summary>The standard it is marked by.</summary>
    public required GritScale Scale { get; init; }

    /// <summary>What is printed on its back: <c>P120</c> or, by CAMI, <c>120</c>.</summary>
    public required string Mark { get; init; }

    /// <summary>Mean size of its particles. [µm]</summary>
    public required double ParticleMicrometres { get; init; }

    /// <summary>What a second source says; null when none was read. [µm]</summary>
    public double? SecondMicrometres { get; init; }

    /// <summary>Source of <see cref="ParticleMicrometres"/>.</summary>
    public required ValueSource Source { get; init; }

    /// <summary>Source of <see cref="SecondMicrometres"/>.</summary>
    public ValueSource? SecondSource { get; init; }

    /// <summary>The mark.</summary>
    public override string ToString() => Mark;
}
