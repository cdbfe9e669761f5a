namespace Scrapwright.Planning.Search;

/// <summary>Width that strips of one glue-up must keep in hand together.</summary>
internal static class WidthInHand
{
    /// <summary>What each keeps for itself, and for every two of them that share passes once more for both. On the grid of widths.</summary>
    internal static long Of(IEnumerable<SegmentOption> strips)
    {
        long sum = 0;
        foreach (var group in strips.GroupBy(s => s.EdgePass))
        {
            sum += group.Sum(s => s.InHand);
            if (group.Key >= 0)
            {
                long count = group.Count();
                sum += ((count * count) - count) * group.Max(s => s.InHand);
            }
        }

        return sum;
    }
}
