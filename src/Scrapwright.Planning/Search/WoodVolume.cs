using Scrapwright.Core.Measures;

namespace Scrapwright.Planning.Search;

/// <summary>Volumes in the unit of the wood level.</summary>
internal static class WoodVolume
{
    /// <summary>Whole cubic millimetres, rounded up.</summary>
    internal static long CeilingMm3(Length length, Length width, Length thickness)
    {
        var volume = Volume.Of(length, width, thickness).CubicPicometres;
        var unit = Int128.Parse("1000000000000000000000000000");
        return (long)((volume + unit - 1) / unit);
    }
}
