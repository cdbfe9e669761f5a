namespace Scrapwright.Core.Sheets;

/// <summary>An upright rectangle on a sheet. <c>default</c> is empty, at the upper left corner.</summary>
/// <param name="LeftMm">Left side from the left of the sheet. [mm]</param>
/// <param name="TopMm">Top from the top of the sheet. [mm]</param>
/// <param name="WidthMm">Width, zero or more. [mm]</param>
/// <param name="HeightMm">Height, zero or more. [mm]</param>
public readonly record struct Frame(double LeftMm, double TopMm, double WidthMm, double HeightMm)
{
    /// <summary>Right side. [mm]</summary>
    public double RightMm => LeftMm + WidthMm;

    /// <summary>Bottom. [mm]</summary>
    public double BottomMm => TopMm + HeightMm;

    /// <summary>The middle.</summary>
    public Spot Middle => new(LeftMm + (WidthMm / 2), TopMm + (HeightMm / 2));

    /// <summary>The smallest frame that holds all spots; empty at the corner for none.</summary>
    public static Frame Around(IEnumerable<Spot> spots)
    {
        ArgumentNullException.ThrowIfNull(spots);
        var any = false;
        double left = 0, top = 0, right = 0, bottom = 0;
        foreach (var spot in spots)
        {
            left = any ? Math.Min(left, spot.XMm) : spot.XMm;
            top = any ? Math.Min(top, spot.YMm) : spot.YMm;
            right = any ? Math.Max(right, spot.XMm) : spot.XMm;
            bottom = any ? Math.Max(bottom, spot.YMm) : spot.YMm;
            any = true;
        }

        return new(left, top, right - left, bottom - top);
    }

    /// <summary>The frame moved right and down. [mm]</summary>
    public Frame Moved(double rightMm, double downMm) => this with { LeftMm = LeftMm + rightMm, TopMm = TopMm + downMm };

    /// <summary>The frame made smaller on every side. [mm]</summary>
    public Frame Inset(double byMm) => new(LeftMm + byMm, TopMm + byMm, Math.Max(0, WidthMm - (2 * byMm)), Math.Max(0, HeightMm - (2 * byMm)));

    /// <summary>True when the other frame lies inside, give or take a slack. [mm]</summary>
    public bool Holds(Frame other, double slackMm = 0) =>
        other.LeftMm >= LeftMm - slackMm && other.TopMm >= TopMm - slackMm
        && other.RightMm <= RightMm + slackMm && other.BottomMm <= BottomMm + slackMm;

    /// <summary>True when the two share more than a slack in both directions. [mm]</summary>
    public bool Overlaps(Frame other, double slackMm = 0) =>
        Math.Min(RightMm, other.RightMm) - Math.Max(LeftMm, other.LeftMm) > slackMm
        && Math.Min(BottomMm, other.BottomMm) - Math.Max(TopMm, other.TopMm) > slackMm;
}
