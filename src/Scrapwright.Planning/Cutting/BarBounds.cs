using System.Numerics;

namespace Scrapwright.Planning.Cutting;

/// <summary>Lower bounds on the number of bars that need no search.</summary>
internal static class BarBounds
{
    /// <summary>The bound of Martello and Toth, known as L2, for bars all alike with room and number enough.</summary>
    /// <remarks>
    /// For a threshold t: pieces above room − t stand alone, those above room / 2 share no bar, and those from t to room / 2 fill what the latter leave.
    /// Source: [MartelloToth1990]. Checked in tests against exhaustive search.
    /// </remarks>
    internal static int Alike(long[] sizes, int[] demands, long room)
    {
        var best = 0;
        foreach (var threshold in sizes.Where(s => s <= room / 2).Append(0).Distinct())
        {
            long alone = 0;
            long large = 0;
            BigInteger largeSum = 0;
            BigInteger small = 0;
            for (var i = 0; i < sizes.Length; i++)
            {
                if (sizes[i] > room - threshold)
                {
                    alone += demands[i];
                }
                else if (sizes[i] > room / 2)
                {
                    large += demands[i];
                    largeSum += (BigInteger)sizes[i] * demands[i];
                }
                else if (sizes[i] >= threshold)
                {
                    small += (BigInteger)sizes[i] * demands[i];
                }
            }

            var over = small - ((BigInteger)room * large - largeSum);
            var more = over > 0 ? (long)((over + room - 1) / room) : 0;
            best = (int)Math.Max(best, alone + large + more);
        }

        return best;
    }
}
