using System.Collections.Immutable;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Pile;

/// <summary>The species that misspelt words may mean.</summary>
/// <param name="Names">Short names, nearest first; each is understood as it stands.</param>
/// <param name="Certain">The species when just one is a single slip away and the word has at least four letters; null otherwise.</param>
public sealed record NearestSpecies(ImmutableArray<string> Names, Species? Certain)
{
    private static readonly NearestSpecies None = new([], null);

    /// <summary>The species nearest to some words.</summary>
    /// <param name="words">What was written.</param>
    public static NearestSpecies To(string words)
    {
        ArgumentNullException.ThrowIfNull(words);
        var letters = Letters(words);
        if (letters.Length is < 2 or > WoodName.MaxLength) return None;
        var found = SpeciesTable.Suggest(words);
        if (found.IsEmpty) return None;
        var certain = letters.Length >= 4 && Slips(letters, found[0]) == 1 && (found.Length == 1 || Slips(letters, found[1]) > 1);
        return new([.. found.Select(species => species.Name)], certain ? found[0] : null);
    }

    private static int Slips(string letters, Species species) =>
        species.Aliases.Append(species.Name).Append(species.FullName).Min(name => SlipsTo(letters, Letters(name)));

    private static int SlipsTo(string letters, string name) =>
        Math.Min(Spelling.Distance(letters, name), Spelling.Distance(letters, WoodName.Plural(name)));

    private static string Letters(string text) =>
        string.Concat(text.Where(char.IsLetter).Select(char.ToLowerInvariant));
}
