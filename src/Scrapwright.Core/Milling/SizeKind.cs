namespace Scrapwright.Core.Milling;

/// <summary>Which size of a panel or board.</summary>
public enum SizeKind
{
    /// <summary>Along the grain.</summary>
    Length,

    /// <summary>Across the grain.</summary>
    Width,

    /// <summary>Through the face.</summary>
    Thickness,
}
