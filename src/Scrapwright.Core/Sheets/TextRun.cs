namespace Scrapwright.Core.Sheets;

/// <summary>Letters of one size in a line of text; a fraction is a small raised run, a fraction slash and a small run.</summary>
/// <param name="Text">The letters.</param>
/// <param name="SizePt">Size of the letters. [pt], 1 pt = 1/72 in</param>
/// <param name="RaiseMm">How far above the line's own foot they stand. [mm]</param>
/// <param name="SpaceMm">White left before the next run. [mm]</param>
public sealed record TextRun(string Text, double SizePt, double RaiseMm = 0, double SpaceMm = 0);
