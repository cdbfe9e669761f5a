namespace Scrapwright.Core.Plans;

/// <summary>How light a wood is, from its CIELAB lightness: light from 70, dark below 50, else middling (our own bands).</summary>
public enum Tone
{
    /// <summary>Any wood does.</summary>
    Any,

    /// <summary>Light wood.</summary>
    Light,

    /// <summary>Middling wood.</summary>
    Middling,

    /// <summary>Dark wood.</summary>
    Dark,
}
