namespace Scrapwright.Core.Plans.Ideas;

/// <summary>How a variant differs from its design, those nearest to it first.</summary>
public enum IdeaStep
{
    /// <summary>The design as it stands.</summary>
    AsItStands,

    /// <summary>The other answer to a yes-or-no choice.</summary>
    OtherChoice,

    /// <summary>Another size.</summary>
    OtherSize,

    /// <summary>Another number.</summary>
    OtherNumber,
}
