using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Scrapwright.Core.Wood;

/// <summary>The species the program knows, and how to find one by what people write. Read once, at first use; safe from any thread.</summary>
public static class SpeciesTable
{
    private static readonly FrozenDictionary<string, Species> ByKey = All.ToFrozenDictionary(species => species.Key, StringComparer.Ordinal);
    private static readonly FrozenDictionary<string, Species> ByLetters = IndexNames().ToFrozenDictionary(StringComparer.Ordinal);
    private static readonly FrozenDictionary<string, Species>.AlternateLookup<ReadOnlySpan<char>> ByLetterSpan = ByLetters.GetAlternateLookup<ReadOnlySpan<char>>();
    private static readonly FrozenDictionary<string, ImmutableArray<Species>> BySharedLetters = IndexSharedNames();
    private static readonly ImmutableArray<(string Letters, Species Species)> Spellings = [.. NamesInOrder()];

    /// <summary>Every species, in the order of the table: domestic hardwoods, softwoods, imported woods.</summary>
    public static ImmutableArray<Species> All => LazyRows.Value;

    /// <summary>Most words in any one name, so that a reader of free text knows how far to look.</summary>
    public static int LongestNameInWords { get; } = All.SelectMany(NamesOf).Max(name => name.Split(' ', '-').Length);

    /// <summary>The species with exactly this key.</summary>
    /// <param name="key">A <see cref="Species.Key"/>, for example <c>black-walnut</c>.</param>
    /// <exception cref="KeyNotFoundException">No species has this key.</exception>
    public static Species Get(string key) => FindKey(key)
        ?? throw new KeyNotFoundException($"No species has the key '{key}'. Maybe {nameof(Find)} is meant, which takes what people write.");

    /// <summary>The species with exactly this key, or null.</summary>
    /// <param name="key">A <see cref="Species.Key"/>; any text.</param>
    public static Species? FindKey(string key) => ByKey.GetValueOrDefault(key);

    /// <summary>The short name of the species with exactly this key; the key itself when there is none.</summary>
    /// <param name="key">A <see cref="Species.Key"/>; any text.</param>
    public static string NameOf(string key) => FindKey(key)?.Name ?? key;

    /// <summary>
    /// The species people mean by a name, or null. Takes keys, short, full, other and botanical names in singular or plural; case, hyphens, spaces and accents
    /// do not matter, nor does "wood" or "lumber" behind. A word that several species share goes to the commonest in a small shop
    /// (maple to hard maple, oak to red oak; common practice, no source); <see cref="Alternatives"/> gives the others.
    /// </summary>
    /// <param name="text">What was written. Any text; a misspelling gives null, see <see cref="Suggest"/>.</param>
    public static Species? Find(ReadOnlySpan<char> text)
    {
        Span<char> buffer = stackalloc char[WoodName.MaxLength];
        int length = WoodName.Normalise(text, buffer);
        if (length <= 0)
        {
            return null;
        }

        ReadOnlySpan<char> letters = buffer[..length];
        if (ByLetterSpan.TryGetValue(letters, out Species? species))
        {
            return species;
        }

        foreach (string ending in (ReadOnlySpan<string>)["wood", "lumber", "timber", "boards", "board"])
        {
            if (letters.EndsWith(ending) && ByLetterSpan.TryGetValue(letters[..^ending.Length], out species))
            {
                return species;
            }
        }

        return null;
    }

    /// <inheritdoc cref="Find(ReadOnlySpan{char})"/>
    public static Species? Find(string text) => Find(text.AsSpan());

    /// <summary>The other species that a shared word may mean: for <c>oak</c>, white oak. Empty for a word that means one species, or none.</summary>
    /// <param name="text">What was written.</param>
    public static ImmutableArray<Species> Alternatives(string text)
    {
        Span<char> letters = stackalloc char[WoodName.MaxLength];
        int length = WoodName.Normalise(text, letters);
        return length > 0 && BySharedLetters.TryGetValue(new string(letters[..length]), out ImmutableArray<Species> others) ? others : [];
    }

    /// <summary>The species whose names are spelled most like a text, nearest first: at most three, and none when nothing is near (more than a third of the letters wrong).</summary>
    /// <param name="text">What was written, for example <c>wallnut</c>.</param>
    public static ImmutableArray<Species> Suggest(string text)
    {
        Span<char> buffer = stackalloc char[WoodName.MaxLength];
        int length = WoodName.Normalise(text, buffer);
        if (length < 2)
        {
            return [];
        }

        string letters = new(buffer[..length]);
        // Our own choice: a third of the letters may be wrong.
        int limit = Math.Max(1, length / 3);

        // Our own choice: more than three suggestions are no help.
        return [.. Spellings
            .Where(spelling => Math.Abs(spelling.Letters.Length - letters.Length) <= limit)
            .Select(spelling => (spelling.Species, Distance: Spelling.Distance(letters, spelling.Letters)))
            .Where(candidate => candidate.Distance <= limit)
            .OrderBy(candidate => candidate.Distance)
            .Select(candidate => candidate.Species)
            .Distinct()
            .Take(3)];
    }

    private static IEnumerable<string> NamesOf(Species species) => [species.Name, species.FullName, .. species.Aliases];

    private static IEnumerable<(string Letters, Species Species)> NamesInOrder() =>
        from species in All from name in NamesOf(species) select (WoodName.Normalise(name), species);

    private static Dictionary<string, Species> IndexNames()
    {
        var index = new Dictionary<string, Species>(StringComparer.Ordinal);
        foreach ((string letters, Species species) in NamesInOrder())
        {
            if (!index.TryAdd(letters, species) && index[letters] != species)
            {
                throw new InvalidDataException($"'{letters}' names both {index[letters].Key} and {species.Key}. Maybe one of them belongs in shared_names.");
            }
        }

        foreach ((string letters, Species species) in NamesInOrder())
        {
            index.TryAdd(WoodName.Plural(letters), species);
        }

        foreach (Species species in All)
        {
            index.TryAdd(WoodName.Normalise(species.ScientificName), species);
            index.TryAdd(WoodName.Normalise(species.ScientificName.Replace("spp.", "", StringComparison.Ordinal)), species);
        }

        return index;
    }

    private static FrozenDictionary<string, ImmutableArray<Species>> IndexSharedNames()
    {
        var pairs = from species in All
                    from name in species.SharedNames
                    let letters = WoodName.Normalise(name)
                    from spelling in new[] { letters, WoodName.Plural(letters) }
                    group species by spelling;
        return pairs.ToFrozenDictionary(group => group.Key, group => group.ToImmutableArray(), StringComparer.Ordinal);
    }

    private static class LazyRows
    {
        internal static readonly ImmutableArray<Species> Value = SpeciesRows.Read();
    }
}
