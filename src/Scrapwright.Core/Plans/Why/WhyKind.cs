namespace Scrapwright.Core.Plans.Why;

/// <summary>What a maker asks about a plan.</summary>
public enum WhyKind
{
    /// <summary>Why a gift is not made.</summary>
    NotMade,

    /// <summary>Why an offcut is in a glue-up.</summary>
    ThisOffcut,

    /// <summary>Why a part's panels are resawn into layers, or are not.</summary>
    Resawing,

    /// <summary>Why a part takes as many glue-ups as it does.</summary>
    GlueUps,
}
