using System.Collections.Immutable;
using Scrapwright.Core.Wood;

namespace Scrapwright.Planning.Search;

/// <summary>Which species may not lie side by side because they look too much alike.</summary>
internal sealed class SpeciesConflicts
{
    private readonly ImmutableArray<string> species;
    private readonly bool[,] conflict;

    internal SpeciesConflicts(IEnumerable<string> keys, double minimumContrast)
    {
        species = [.. keys.Distinct().Order(StringComparer.Ordinal)];
        conflict = new bool[species.Length, species.Length];
        for (var i = 0; i < species.Length; i++)
        {
            for (var j = 0; j < species.Length; j++)
            {
                conflict[i, j] = LookAlike(species[i], species[j], minimumContrast);
            }
        }
    }

    /// <summary>True when they are the same or differ by less than asked.</summary>
    internal static bool LookAlike(string one, string other, double minimumContrast) =>
        one == other || ColourDifference.Ciede2000(SpeciesTable.Get(one).Colour, SpeciesTable.Get(other).Colour) < minimumContrast;

    /// <summary>
    /// Largest sets of species that all conflict with each other: of the strips from one set, no two may touch.
    /// </summary>
    internal ImmutableArray<ImmutableHashSet<string>> Cliques()
    {
        var found = ImmutableArray.CreateBuilder<ImmutableHashSet<string>>();
        Extend([], [.. Enumerable.Range(0, species.Length)], [], found);
        return found.ToImmutable();
    }

    /// <summary>The species that may lie beside at least one of the given ones.</summary>
    internal ImmutableHashSet<string> GoingWithAny(ImmutableHashSet<string> given)
    {
        var places = given.Select(g => species.IndexOf(g)).ToList();
        return [.. species.Where((_, i) => places.Any(g => !conflict[g, i]))];
    }

    private void Extend(List<int> clique, List<int> candidates, List<int> excluded, ImmutableArray<ImmutableHashSet<string>>.Builder found)
    {
        if (candidates.Count == 0 && excluded.Count == 0)
        {
            found.Add([.. clique.Select(i => species[i])]);
            return;
        }

        foreach (var next in candidates.ToList())
        {
            Extend(
                [.. clique, next],
                [.. candidates.Where(c => c != next && conflict[c, next])],
                [.. excluded.Where(c => conflict[c, next])],
                found);
            candidates.Remove(next);
            excluded.Add(next);
        }
    }
}
