namespace Scrapwright.Core.Wood;

/// <summary>How often a reaction is seen among people who work the wood. Letters of the chart: R, U, C.</summary>
public enum ReactionFrequency
{
    /// <summary>Rare. R.</summary>
    Rare,

    /// <summary>Uncommon. U.</summary>
    Uncommon,

    /// <summary>Common. C.</summary>
    Common,
}
