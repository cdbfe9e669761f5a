namespace Scrapwright.Core.Wood;

/// <summary>How fine a mask to wear. Common practice, no source; the names are those of European and United States mask classes, from memory.</summary>
public enum DustMask
{
    /// <summary>Fine dust: FFP2 or N95.</summary>
    Fine,

    /// <summary>Finest dust: FFP3 or P100.</summary>
    Finest,
}
