namespace Scrapwright.Core.Finishing;

/// <summary>The grit to begin with.</summary>
public static class StartingGrit
{
    /// <summary>Planer marks P120, bandsaw marks P60, a hand-planed face P180. Common practice, no source: begin as fine as still takes the marks away.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No such surface.</exception>
    public static Grit For(SurfaceFrom surface) => GritTable.Get(surface switch
    {
        SurfaceFrom.Planer => "P120",
        SurfaceFrom.Bandsaw => "P60",
        SurfaceFrom.HandPlane => "P180",
        _ => throw new ArgumentOutOfRangeException(nameof(surface), surface, "Planer, Bandsaw or HandPlane."),
    });
}
