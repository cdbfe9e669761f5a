using System.Collections.Immutable;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Fits;

/// <summary>What a fit assumes, in sentences.</summary>
internal static class FitNotes
{
    internal static IEnumerable<string> OfYear(SeasonFit season, Gift? gift)
    {
        if (season.FittedMonthIsAssumed)
            yield return $"No date: taken as fitted in {FitWords.Month(season.FittedMonth)}, the driest month of the shop's year, from which wood swells most.";
        if (gift?.Climate.Trim() is { Length: > 0 } named && !named.Equals(season.LivesIn.Key, StringComparison.OrdinalIgnoreCase))
            yield return $"No climate is called “{named}”; the shop's is taken.";
    }

    // Our own choice: more than four names in a row are not read.
    internal static string OfGuess(string part, ImmutableArray<string> species) =>
        $"The wood of the {part} is not known: the worst of {(species.Length > 4 ? $"{species.Length} species" : string.Join(", ", species.Select(SpeciesTable.NameOf)))} is taken.";

    internal static IEnumerable<string> OfWoods(IEnumerable<MovingWood> woods)
    {
        var all = woods.ToArray();
        foreach (var species in all.Select(w => w.Species).Distinct().Where(s => !WoodStrain.IsKnown(s)))
            yield return $"How much {SpeciesTable.NameOf(species)} moves is not known: {WoodStrain.WorstName}, which moves most, stands in for it.";
        if (all.Any(w => w.Rings == RingOrientation.Unknown))
            yield return "Where nobody has looked at the growth rings, the worst of flat and quarter sawn is taken.";
    }
}
