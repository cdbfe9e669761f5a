namespace Scrapwright.Core.Sheets;

/// <summary>One column of a table.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="WidthMm">Its width. [mm]</param>
/// <param name="Right">True for numbers that end at the right side.</param>
internal sealed record Column(string Title, double WidthMm, bool Right = false);
