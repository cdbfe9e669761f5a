namespace Scrapwright.Core.Sheets;

/// <summary>How drawings show wood.</summary>
public enum DrawingLook
{
    /// <summary>Black lines and a hatch for each species: for paper.</summary>
    Hatched,

    /// <summary>The colour of each species: for screens.</summary>
    WoodColours,
}
