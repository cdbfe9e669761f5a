namespace Scrapwright.Core.Designs;

/// <summary>Which ends of a part are cut at 45 degrees.</summary>
public enum MitredEnds
{
    /// <summary>Both ends square.</summary>
    None,

    /// <summary>The left end.</summary>
    Left,

    /// <summary>The right end.</summary>
    Right,

    /// <summary>Both ends.</summary>
    Both,
}
