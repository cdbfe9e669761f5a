namespace Scrapwright.Core.Designs;

/// <summary>Which way the growth rings of neighbouring strips bow. The heart side is the one that lay nearer the middle of the tree.</summary>
public enum HeartSides
{
    /// <summary>As the strips come.</summary>
    AsTheyCome,

    /// <summary>Heart up, heart down, and so on: what cups, cups in small waves, and the panel stays flat as a whole.</summary>
    Alternating,

    /// <summary>All hearts up: the panel cups in one sweep that a batten can hold.</summary>
    Alike,
}
