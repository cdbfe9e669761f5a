using System.Collections.Immutable;

namespace Scrapwright.Core.Sheets;

/// <summary>A single drawing in real lengths, for a sheet or a screen.</summary>
/// <param name="WidthMm">Width on paper. [mm]</param>
/// <param name="HeightMm">Height on paper. [mm]</param>
/// <param name="Title">What it is.</param>
/// <param name="Summary">What it shows, in a sentence, for those who cannot see it.</param>
/// <param name="Marks">Everything on it, drawn in order.</param>
public sealed record Drawing(double WidthMm, double HeightMm, string Title, string Summary, ImmutableArray<Mark> Marks)
{
    /// <summary>Every mark on it, out of its groups.</summary>
    public IEnumerable<Mark> AllMarks => Sheet.Flat(Marks);
}
