namespace Scrapwright.Core.Finishing;

/// <summary>What a surface comes from, and so how deep its marks are.</summary>
public enum SurfaceFrom
{
    /// <summary>The thickness planer or jointer: fine ripples.</summary>
    Planer,

    /// <summary>The bandsaw: deep marks, not planed since.</summary>
    Bandsaw,

    /// <summary>A sharp hand plane or scraper.</summary>
    HandPlane,
}
