namespace Scrapwright.Core.Wood;

/// <summary>How sure a value is. The order is from surest to least sure.</summary>
public enum Confidence
{
    /// <summary>Read in a public copy of the source. Written <c>printed</c>.</summary>
    Printed,

    /// <summary>Computed from a printed value by a published formula. Written <c>derived</c>.</summary>
    Derived,

    /// <summary>Recalled, and it reproduces another printed value. Written <c>derived-check</c>.</summary>
    DerivedCheck,

    /// <summary>Recalled only. Written <c>memory</c>.</summary>
    FromMemory,

    /// <summary>A plausible figure with no source. Written <c>estimate</c>, and shown so on screens.</summary>
    Estimate,
}
