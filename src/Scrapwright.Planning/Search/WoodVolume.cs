using Scrapwright.Core.Measures;

namespace Scrapwright.Planning.Search;

/// <summary>Volumes in the unit of the wood level.</summary>
internal static class WoodVolume
{
    /// <summary>Whole cubic millimetres of one layer's share, rounded up.</summary>
    internal static long CeilingMm3(Length length, Length width, Length thickness, int layers)
    {
        var volume = Volume.Of(length, width, thickness).CubicPicometres;
        var unit = Int128.Parse("1000000000000000000000000000") * layers;
        return (long)((volume + unit - 1) / unit);
    }
}
