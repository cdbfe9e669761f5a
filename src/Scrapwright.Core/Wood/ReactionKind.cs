namespace Scrapwright.Core.Wood;

/// <summary>What a wood can do to people. Letters of the chart: I, S, C, P, DT, N; their meaning is from memory.</summary>
public enum ReactionKind
{
    /// <summary>Irritates. I.</summary>
    Irritant,

    /// <summary>Makes people sensitive: later contacts react more. S.</summary>
    Sensitiser,

    /// <summary>Linked to cancer of the nose. C.</summary>
    NasalCancer,

    /// <summary>Inflames the lungs. P.</summary>
    LungInflammation,

    /// <summary>Poisonous in itself. DT.</summary>
    Poison,

    /// <summary>Makes people feel sick. N.</summary>
    Nausea,
}
