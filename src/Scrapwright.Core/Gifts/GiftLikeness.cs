using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Gifts;

/// <summary>Compares a gift with a former one of its design, by what was asked for: options with the design's defaults filled in.</summary>
internal static class GiftLikeness
{
    /// <param name="gift">The gift.</param>
    /// <param name="former">A former gift of the same design.</param>
    /// <param name="designs">All designs there are.</param>
    internal static Likeness Of(Gift gift, GivenGift former, ImmutableArray<Design> designs)
    {
        var design = designs.FirstOrDefault(d => GiftYears.IsSame(d.Key, gift.Design));
        if (design is null || DesignCatalogue.FindFamily(design.Family.Trim()) is not { } family)
            return gift.Options.SequenceEqual(former.Options) ? Likeness.Same : Likeness.SameDesign;

        // Which other gift it holds says nothing about its looks.
        var compared = family.Parameters.Where(parameter => parameter.Kind != ParameterKind.Gift).ToArray();
        var woods = compared.Where(parameter => parameter.Kind == ParameterKind.Species).ToArray();

        // A wish that is left open says nothing about the woods it was made of.
        if (woods.Length > 0 && woods.All(wood => Text(wood, gift.Options, design).Length == 0)) return Likeness.SameDesign;
        bool Are(IEnumerable<DesignParameter> parameters) => parameters.All(parameter => AreAlike(parameter, gift.Options, former.Options, design));
        return Are(compared) ? Likeness.Same : Are(woods) ? Likeness.SameWoods : Likeness.SameDesign;
    }

    /// <summary>The woods a text of options wishes for, as one comparable text: names in one order, whatever they were written as.</summary>
    internal static string Woods(string text) =>
        string.Join('+', text.Split('+', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(name => SpeciesTable.Find(name)?.Key ?? name.ToLowerInvariant()).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));

    private static bool AreAlike(DesignParameter parameter, ImmutableSortedDictionary<string, string> one, ImmutableSortedDictionary<string, string> other, Design design)
    {
        var (mine, theirs) = (Text(parameter, one, design), Text(parameter, other, design));
        return parameter.Kind == ParameterKind.Species
            ? Woods(mine) == Woods(theirs)
            : string.Equals(mine, theirs, StringComparison.OrdinalIgnoreCase);
    }

    private static string Text(DesignParameter parameter, ImmutableSortedDictionary<string, string> options, Design design) =>
        (Find(options, parameter.Key) ?? Find(design.Options, parameter.Key) ?? parameter.Default).Trim();

    private static string? Find(ImmutableSortedDictionary<string, string> options, string key) =>
        options.FirstOrDefault(option => string.Equals(option.Key.Trim(), key, StringComparison.OrdinalIgnoreCase)).Value;
}
