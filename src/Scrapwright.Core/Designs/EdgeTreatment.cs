namespace Scrapwright.Core.Designs;

/// <summary>What is done to the long edges and ends of a part.</summary>
public enum EdgeTreatment
{
    /// <summary>Sharp corners broken with a little sandpaper.</summary>
    Eased,

    /// <summary>A 45 degree chamfer.</summary>
    Chamfer,

    /// <summary>A round-over.</summary>
    RoundOver,

    /// <summary>Left square.</summary>
    Square,
}
