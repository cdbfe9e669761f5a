namespace Scrapwright.Core.Wood;

/// <summary>Where a reaction shows. Letters of the chart: S, E, R, C, N; their meaning is from memory.</summary>
public enum ReactionWay
{
    /// <summary>Skin. S.</summary>
    Skin,

    /// <summary>Eyes. E.</summary>
    Eyes,

    /// <summary>Nose, throat and lungs. R.</summary>
    Breathing,

    /// <summary>Heart. C.</summary>
    Heart,

    /// <summary>Feeling sick. N.</summary>
    Nausea,
}
