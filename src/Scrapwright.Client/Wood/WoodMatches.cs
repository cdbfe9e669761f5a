using System.Collections.Immutable;
using Scrapwright.Core.Wood;

namespace Scrapwright.Client.Wood;

/// <summary>The woods that a maker may mean while still typing.</summary>
public static class WoodMatches
{
    /// <summary>Most suggestions at a time: more than these are not read.</summary>
    public const int Most = 8;

    /// <summary>The woods for what is typed, likeliest first: the one it names, then names that begin so, then names with a word that begins so, then near spellings.</summary>
    /// <param name="text">What stands in the field.</param>
    public static ImmutableArray<Species> For(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var wanted = text.Trim();
        if (wanted.Length == 0) return [];
        var named = SpeciesTable.Find(wanted) is { } found ? [found] : ImmutableArray<Species>.Empty;
        return
        [
            .. named.Concat(SpeciesTable.Alternatives(wanted))
                .Concat(SpeciesTable.All.Where(species => Names(species).Any(name => name.StartsWith(wanted, StringComparison.OrdinalIgnoreCase))))
                .Concat(SpeciesTable.All.Where(species => Names(species).Any(name => name.Contains(" " + wanted, StringComparison.OrdinalIgnoreCase))))
                .Concat(SpeciesTable.Suggest(wanted))
                .Distinct().Take(Most),
        ];
    }

    /// <summary>The wood that an address names, by key or by any name; null when it names none.</summary>
    public static Species? InAddress(string? part) => string.IsNullOrWhiteSpace(part) ? null : SpeciesTable.Find(Uri.UnescapeDataString(part));

    private static IEnumerable<string> Names(Species species) => [species.Name, species.FullName, .. species.Aliases, species.ScientificName];
}
