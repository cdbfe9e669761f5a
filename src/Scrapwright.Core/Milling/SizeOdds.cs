namespace Scrapwright.Core.Milling;

/// <summary>Chances that length, width and thickness hold, each 0 to 1. They hang on different passes, so the chance of all is their product.</summary>
public sealed record SizeOdds
{
    /// <summary>Chance that every blank gets its length with both ends squared.</summary>
    public required double Length { get; init; }

    /// <summary>Chance that every panel and board is wide enough to be trimmed to its width.</summary>
    public required double Width { get; init; }

    /// <summary>Chance that every layer and board is thick enough to be planed to its thickness.</summary>
    public required double Thickness { get; init; }

    /// <summary>Chance that all hold.</summary>
    public double All => Length * Width * Thickness;

    /// <summary>Chance that all hold, in thousandths rounded down. 0 to 1000.</summary>
    public int PerMille => (int)Math.Floor(Math.Min(1, All) * 1000);
}
