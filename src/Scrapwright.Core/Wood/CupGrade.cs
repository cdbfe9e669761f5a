namespace Scrapwright.Core.Wood;

/// <summary>How much a strip cups, in words. Limits are our own choice.</summary>
public enum CupGrade
{
    /// <summary>Less than a clamp takes out unseen: under 0.1 mm. Our own choice.</summary>
    None,

    /// <summary>Felt with a straight edge: 0.1 mm to under 0.5 mm. Our own choice.</summary>
    Slight,

    /// <summary>Seen, and work to take out: 0.5 mm and more. Our own choice.</summary>
    Marked,
}
