namespace Scrapwright.Core.Measures;

/// <summary>The unit a length is shown in, and the one a bare number is read in. Never part of a <see cref="Length"/>.</summary>
public enum LengthUnit
{
    /// <summary>International inch, 25.4 mm exactly.</summary>
    Inch,

    /// <summary>Millimetre.</summary>
    Millimetre,
}
