namespace Scrapwright.Core.Plans.Choices;

/// <summary>Why a pin cannot be kept.</summary>
public enum PinFault
{
    /// <summary>The pile has no such offcut.</summary>
    NotInPile,

    /// <summary>The offcut is kept for later.</summary>
    KeptForLater,

    /// <summary>No clear stretch of it is long enough for a single blank.</summary>
    TooShort,

    /// <summary>It is narrower than a strip may be.</summary>
    TooNarrow,

    /// <summary>Milled, it is thinner than the part needs.</summary>
    TooThin,

    /// <summary>Taken alone it would do; beside the other pins, strips and gifts no way was found.</summary>
    NoWayFound,
}
