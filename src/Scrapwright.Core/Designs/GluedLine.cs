using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Designs;

/// <summary>A line along which two parts are glued to each other. Where one moves along it and the other does not, the joint is cross-grain.</summary>
/// <param name="Part">Key of one part.</param>
/// <param name="Direction">Which way the line lies in it.</param>
/// <param name="Other">Key of the other part; the same key for two copies of one part.</param>
/// <param name="OtherDirection">Which way the line lies in the other.</param>
/// <param name="Size">How long the line is.</param>
public sealed record GluedLine(string Part, GrainDirection Direction, string Other, GrainDirection OtherDirection, Length Size)
{
    /// <summary>What helps when the two move apart, in a sentence; empty when the lines never cross.</summary>
    public string Remedy { get; init; } = "";

    /// <summary>True when one part moves along the line and the other does not: the joint is cross-grain.</summary>
    public bool Crosses => Direction == GrainDirection.Along != (OtherDirection == GrainDirection.Along);
}
