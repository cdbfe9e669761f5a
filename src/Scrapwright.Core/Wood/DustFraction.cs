namespace Scrapwright.Core.Wood;

/// <summary>Which part of the dust in the air a limit counts.</summary>
public enum DustFraction
{
    /// <summary>All that a filter takes from the air.</summary>
    Total,

    /// <summary>What nose and mouth breathe in.</summary>
    Inhalable,

    /// <summary>What reaches the depth of the lungs.</summary>
    Respirable,
}
