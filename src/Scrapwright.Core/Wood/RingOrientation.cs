namespace Scrapwright.Core.Wood;

/// <summary>How the growth rings meet the face of a board. Decides which way it moves most. <c>default</c> is <see cref="Unknown"/>.</summary>
public enum RingOrientation
{
    /// <summary>Nobody has looked. Computations take the larger movement, the tangential one.</summary>
    Unknown,

    /// <summary>Flat-sawn: rings less than about 30 degrees to the face. The width moves tangentially. Angles: common practice, no source.</summary>
    Flat,

    /// <summary>Rift-sawn: rings about 30 to 60 degrees to the face. The width moves between radially and tangentially.</summary>
    Rift,

    /// <summary>Quarter-sawn: rings more than about 60 degrees to the face. The width moves radially.</summary>
    Quarter,
}
