namespace Scrapwright.Core.Plans.Choices;

/// <summary>In which order an offcut was milled and cut.</summary>
public enum MilledWay
{
    /// <summary>Faces and edges at full length and width, then ripped, then crosscut.</summary>
    Whole,

    /// <summary>Ripped first, each lane milled alone.</summary>
    RippedFirst,

    /// <summary>Crosscut first, each piece milled alone.</summary>
    CrosscutFirst,
}
