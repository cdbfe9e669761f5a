using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Wood;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Building;

/// <summary>Puts the strips of a glue-up in order.</summary>
internal static class StripOrder
{
    /// <summary>The places of the strips in their order, lower edge first; null when no order keeps alike strips apart.</summary>
    /// <param name="species">Species key of each strip.</param>
    /// <param name="wish">How the panel shall look.</param>
    /// <param name="minimumContrast">Least difference between neighbours.</param>
    internal static ImmutableArray<int>? Find(ImmutableArray<string> species, PanelWish wish, double minimumContrast)
    {
        if (species.Length == 1)
        {
            return [0];
        }

        if (wish.MinimumStrips < 2)
        {
            return Path(species, 0);
        }

        return wish.Pattern switch
        {
            StripPattern.Graduated => Graduated(species),
            StripPattern.Accent => Accent(species, minimumContrast),
            StripPattern.Mirrored => Mirrored(species, minimumContrast) ?? Path(species, minimumContrast),
            _ => Path(species, minimumContrast),
        };
    }

    /// <summary>The places of the strips with every sister opposite its sister, lower edge first; null when more than one has none, or no such order keeps alike strips apart.</summary>
    /// <param name="species">Species key of each strip.</param>
    /// <param name="sisters">For each strip the place of its sister in the list, −1 for none.</param>
    /// <param name="minimumContrast">Least difference between neighbours that are no sisters.</param>
    internal static ImmutableArray<int>? BookMatched(ImmutableArray<string> species, ImmutableArray<int> sisters, double minimumContrast)
    {
        var single = Enumerable.Range(0, species.Length).Where(i => sisters[i] < 0).ToList();
        var pairs = Enumerable.Range(0, species.Length).Where(i => sisters[i] > i).ToList();
        if (single.Count > 1 || pairs.Count == 0)
        {
            return null;
        }

        // From the middle outwards; of a pair in the middle the joint does not count.
        List<int> half = [.. single, .. pairs];
        var path = half.Count == 1 ? [0] : Path([.. half.Select(i => species[i])], minimumContrast, first: single.Count - 1);
        if (path is not { } found)
        {
            return null;
        }

        var outwards = found.Skip(single.Count).Select(i => half[i]).ToList();
        return [.. outwards.AsEnumerable().Reverse(), .. single, .. outwards.Select(i => sisters[i])];
    }

    private static ImmutableArray<int>? Graduated(ImmutableArray<string> species)
    {
        var order = Enumerable.Range(0, species.Length)
            .OrderByDescending(i => SpeciesTable.Get(species[i]).Colour.L).ThenBy(i => species[i], StringComparer.Ordinal).ToImmutableArray();
        return order.Zip(order.Skip(1)).Any(pair => species[pair.First] == species[pair.Second]) ? null : order;
    }

    /// <summary>
    /// The strip that is alone at about a third of the panel, strips of the other wood around it; without one such strip the woods stand in blocks from light to dark.
    /// Null when two woods of the panel look alike.
    /// </summary>
    private static ImmutableArray<int>? Accent(ImmutableArray<string> species, double minimumContrast)
    {
        var woods = Enumerable.Range(0, species.Length).GroupBy(i => species[i])
            .OrderByDescending(g => SpeciesTable.Get(g.Key).Colour.L).ThenBy(g => g.Key, StringComparer.Ordinal).ToList();
        for (var i = 0; i < woods.Count; i++)
        {
            if (woods.Skip(i + 1).Any(w => SpeciesConflicts.LookAlike(woods[i].Key, w.Key, minimumContrast)))
            {
                return null;
            }
        }

        if (woods.Count != 2 || woods.MinBy(w => w.Count()) is not { } accent || accent.Count() != 1)
        {
            return [.. woods.SelectMany(w => w)];
        }

        var around = woods.Single(w => w.Key != accent.Key).ToList();
        return [.. around.Take((around.Count + 2) / 3), accent.Single(), .. around.Skip((around.Count + 2) / 3)];
    }

    /// <summary>Pairs of one species to both sides of the one that is over.</summary>
    private static ImmutableArray<int>? Mirrored(ImmutableArray<string> species, double minimumContrast)
    {
        var groups = Enumerable.Range(0, species.Length).GroupBy(i => species[i]).ToList();
        var odd = groups.Where(g => g.Count() % 2 == 1).ToList();
        if (odd.Count != 1)
        {
            return null;
        }

        var middle = odd[0].Last();
        var pairs = groups.SelectMany(g => g.Where(i => i != middle).Chunk(2)).ToList();
        ImmutableArray<string> half = [species[middle], .. pairs.Select(p => species[p[0]])];
        if (half.Length == 1 || Path(half, minimumContrast, first: 0) is not { } path)
        {
            return null;
        }

        var outwards = path.Skip(1).Select(i => pairs[i - 1]).ToList();
        return [.. outwards.AsEnumerable().Reverse().Select(p => p[0]), middle, .. outwards.Select(p => p[1])];
    }

    /// <summary>
    /// The order whose least difference between neighbours is largest, and among those the one whose differences add up to most.
    /// Exact, by dynamic programming over subsets: at most 2^n · n² steps, n up to 12.
    /// </summary>
    private static ImmutableArray<int>? Path(ImmutableArray<string> species, double minimumContrast, int first = -1)
    {
        var n = species.Length;
        var difference = new double[n, n];
        var thresholds = new SortedSet<double>();
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++)
            {
                difference[i, j] = species[i] == species[j]
                    ? 0
                    : ColourDifference.Ciede2000(SpeciesTable.Get(species[i]).Colour, SpeciesTable.Get(species[j]).Colour);
                if (i != j && difference[i, j] >= minimumContrast)
                {
                    thresholds.Add(difference[i, j]);
                }
            }
        }

        foreach (var threshold in thresholds.Reverse())
        {
            if (LongestPath(difference, n, threshold, first) is { } path)
            {
                return path;
            }
        }

        return null;
    }

    private static ImmutableArray<int>? LongestPath(double[,] difference, int n, double threshold, int first)
    {
        var all = (1 << n) - 1;
        var best = new double[1 << n, n];
        var from = new int[1 << n, n];
        for (var set = 1; set <= all; set++)
        {
            for (var last = 0; last < n; last++)
            {
                best[set, last] = double.NegativeInfinity;
                if ((set & (1 << last)) == 0)
                {
                    continue;
                }

                var rest = set & ~(1 << last);
                if (rest == 0)
                {
                    best[set, last] = first < 0 || last == first ? 0 : double.NegativeInfinity;
                    continue;
                }

                for (var before = 0; before < n; before++)
                {
                    if ((rest & (1 << before)) != 0 && difference[before, last] >= threshold
                        && best[rest, before] + difference[before, last] > best[set, last])
                    {
                        best[set, last] = best[rest, before] + difference[before, last];
                        from[set, last] = before;
                    }
                }
            }
        }

        var end = Enumerable.Range(0, n).MaxBy(i => best[all, i]);
        if (double.IsNegativeInfinity(best[all, end]))
        {
            return null;
        }

        var path = new List<int>();
        for (var set = all; set != 0;)
        {
            path.Add(end);
            var before = from[set, end];
            set &= ~(1 << end);
            end = before;
        }

        path.Reverse();
        return [.. path];
    }
}
