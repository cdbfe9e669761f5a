namespace Scrapwright.Core.Plans.Audit;

/// <summary>A panel or board with what it has over and what may eat it up. All in millimetres.</summary>
internal sealed record SizeCase
{
    /// <summary>How many layers: so often is it cleaned up, trimmed and cut.</summary>
    public required int Times { get; init; }

    /// <summary>Length over.</summary>
    public required double LengthRoomMm { get; init; }

    /// <summary>Width over.</summary>
    public required double WidthRoomMm { get; init; }

    /// <summary>Spread of one trim.</summary>
    public double TrimMm { get; init; }

    /// <summary>Spread of flattening.</summary>
    public double FlattenMm { get; init; }

    /// <summary>Spread of one layer's clean-up, as thickness of the whole panel.</summary>
    public double CleanUpMm { get; init; }

    /// <summary>Its strips.</summary>
    public required StripCase[] Strips { get; init; }

    /// <summary>One strip: thickness over, and the works on its faces and edges. A layer has a work of its own beside those it shares with its neighbours.</summary>
    internal sealed record StripCase(double RoomMm, (int Work, double SpreadMm)[] Faces, (int Work, double SpreadMm) Layer, (int Work, double SpreadMm)[] Edges)
    {
        internal int FaceKey => Faces.Length == 0 ? -1 : Faces[^1].Work;

        internal double FaceMm => Math.Sqrt(Faces.Sum(f => f.SpreadMm * f.SpreadMm));

        internal bool IsLayer => Layer.SpreadMm > 0;

        internal bool IsBare => FaceMm <= 0 && !IsLayer;
    }
}
