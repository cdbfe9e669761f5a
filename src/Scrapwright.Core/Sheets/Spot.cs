namespace Scrapwright.Core.Sheets;

/// <summary>A place on a sheet or drawing, from its upper left corner. <c>default</c> is that corner.</summary>
/// <param name="XMm">To the right. [mm]</param>
/// <param name="YMm">Downwards. [mm]</param>
public readonly record struct Spot(double XMm, double YMm)
{
    /// <summary>The place moved right and down. [mm]</summary>
    public Spot Moved(double rightMm, double downMm) => new(XMm + rightMm, YMm + downMm);
}
