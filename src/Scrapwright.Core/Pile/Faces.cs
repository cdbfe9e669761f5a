namespace Scrapwright.Core.Pile;

/// <summary>What has already been done to the two wide faces of an offcut.</summary>
public enum Faces
{
    /// <summary>Both faces are rough from the saw; both must be worked.</summary>
    Rough,

    /// <summary>One face is flat and smooth; only the other must be worked.</summary>
    OneSurfaced,

    /// <summary>Both faces are flat, smooth and parallel; no face work is needed unless the piece is warped.</summary>
    BothSurfaced,
}
