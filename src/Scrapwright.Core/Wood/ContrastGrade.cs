namespace Scrapwright.Core.Wood;

/// <summary>How well two neighbouring strips stand apart, in words. Limits on ΔE00 are our own choice (estimate).</summary>
public enum ContrastGrade
{
    /// <summary>Reads as one board: under 3.</summary>
    None,

    /// <summary>Seen when looked for: 3 to under 8.</summary>
    Slight,

    /// <summary>Seen at once: 8 to under 20.</summary>
    Clear,

    /// <summary>Seen across the room: 20 and more.</summary>
    Strong,
}
