namespace Scrapwright.Core.Measures;

/// <summary>Where a value goes that does not fall on a mark.</summary>
public enum Rounding
{
    /// <summary>Toward minus infinity: −1.2 becomes −2.</summary>
    Down,

    /// <summary>Toward plus infinity: −1.2 becomes −1.</summary>
    Up,

    /// <summary>To the nearest mark; halfway goes away from zero: 0.5 becomes 1, −0.5 becomes −1.</summary>
    Nearest,
}
