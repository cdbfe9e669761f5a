namespace Scrapwright.Core.Wood;

/// <summary>What of the tree does it. Letters of the chart: D, W, LB.</summary>
public enum ReactionOrigin
{
    /// <summary>Dust. D.</summary>
    Dust,

    /// <summary>The wood itself. W.</summary>
    Wood,

    /// <summary>Leaves and bark. LB.</summary>
    LeavesAndBark,
}
