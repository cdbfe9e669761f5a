namespace Scrapwright.Planning.Calendar.Advice;

/// <summary>
/// Numbers drawn by chance, each known by seed, run and name: the same task has the same number whatever else is in the calendar, so two calendars are compared under the same luck.
/// </summary>
internal static class Draws
{
    /// <summary>A number that stands for a name: FNV-1a (Fowler, Noll and Vo; from memory).</summary>
    internal static ulong Name(string name)
    {
        var hash = 14695981039346656037UL;
        foreach (var letter in name) hash = unchecked((hash ^ letter) * 1099511628211UL);
        return hash;
    }

    /// <summary>Evenly spread from 0 up to, not including, 1: the mixing function of SplitMix64 (Steele, Lea and Flood, 2014; from memory).</summary>
    internal static double Even(int seed, int run, ulong name)
    {
        var mixed = Mixed(unchecked(name + (0x9E3779B97F4A7C15UL * (ulong)(uint)seed)));
        mixed = Mixed(unchecked(mixed + (0x9E3779B97F4A7C15UL * ((ulong)(uint)run + 1))));
        return (mixed >> 11) * (1.0 / (1UL << 53));
    }

    /// <summary>The value below which a triangular spread lies with a probability (inverse of its distribution function).</summary>
    /// <param name="even">The probability. [1], 0 to 1</param>
    /// <param name="least">Lower end. [any]</param>
    /// <param name="likely">Where most lie; not below the least. [any]</param>
    /// <param name="most">Upper end; not below the likely. [any]</param>
    internal static double Triangular(double even, double least, double likely, double most)
    {
        if (most <= least) return likely;
        var below = (likely - least) / (most - least);
        return even < below
            ? least + Math.Sqrt(even * (most - least) * (likely - least))
            : most - Math.Sqrt((1 - even) * (most - least) * (most - likely));
    }

    private static ulong Mixed(ulong value)
    {
        unchecked
        {
            value = (value ^ (value >> 30)) * 0xBF58476D1CE4E5B9UL;
            value = (value ^ (value >> 27)) * 0x94D049BB133111EBUL;
            return value ^ (value >> 31);
        }
    }
}
