namespace Scrapwright.Core.Finishing;

/// <summary>How a finish goes on.</summary>
public enum FinishMethod
{
    /// <summary>Flooded, left to soak, wiped dry.</summary>
    Wipe,

    /// <summary>Brushed or padded on and left.</summary>
    Brush,

    /// <summary>Rubbed in, left to soak, wiped and buffed.</summary>
    Rub,
}
