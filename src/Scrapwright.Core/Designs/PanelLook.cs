using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Designs;

/// <summary>Parameters that say how a striped panel looks.</summary>
internal static class PanelLook
{
    internal const string Species = "species";
    internal const string SquareSpecies = "square-species";
    private const string Pattern = "pattern";
    private const string Strips = "strips";
    private const string LeastContrast = "least-contrast";
    private const string Hearts = "hearts";
    private const string Panels = "from-panels";
    private const int MostStrips = 12;

    internal static readonly DesignParameter SpeciesParameter =
        new(Species, "Species", ParameterKind.Species, "", "Wished species with + between them; empty for any.", []);

    internal static readonly DesignParameter SquareSpeciesParameter =
        new(SquareSpecies, "Species of its squares", ParameterKind.Species, "", "Only when it makes the squares too.", []);

    internal static readonly ImmutableArray<DesignParameter> Parameters =
    [
        new(Pattern, "Pattern", ParameterKind.Choice, "contrast", "How the strips follow each other.", ["contrast", "alternating", "mirrored", "book-matched", "graduated", "accent", "free"]),
        new(Strips, "Fewest strips", ParameterKind.Count, "3", "At least so many strips in each glue-up.", [], "2", "12"),
        new(LeastContrast, "Least contrast", ParameterKind.Count, "", "Least colour difference of neighbours, ΔE; empty for the shop's.", [], "0", "50"),
        new(Hearts, "Heart sides", ParameterKind.Choice, "any", "Which way the rings of neighbouring strips bow.", ["any", "alternating", "alike"]),
        new(Panels, "Panels", ParameterKind.Choice, "any", "All pieces from one panel, or each from its own and of other woods.", ["any", "one", "each"]),
    ];

    internal static PanelWish Read(DesignOptions options, string speciesKey)
    {
        var pattern = options.ReadChoice(Pattern) switch
        {
            "mirrored" => StripPattern.Mirrored,
            "book-matched" => StripPattern.BookMatched,
            "graduated" => StripPattern.Graduated,
            "alternating" => StripPattern.Alternating,
            "accent" => StripPattern.Accent,
            "free" => StripPattern.Free,
            _ => StripPattern.Contrast,
        };
        options.Require(pattern != StripPattern.BookMatched || options.ReadChoice(Hearts) == "any", Hearts, DesignMessages.HeartsOfSisters);
        return new PanelWish(pattern, options.ReadSpecies(speciesKey), options.ReadCount(Strips), MostStrips)
        {
            LeastContrast = options.ReadText(LeastContrast).Length > 0 ? options.ReadCount(LeastContrast) : null,
            Hearts = options.ReadChoice(Hearts) switch
            {
                "alternating" => HeartSides.Alternating,
                "alike" => HeartSides.Alike,
                _ => HeartSides.AsTheyCome,
            },
            Panels = options.ReadChoice(Panels) switch
            {
                "one" => SetPanels.One,
                "each" => SetPanels.Each,
                _ => SetPanels.Any,
            },
        };
    }

    /// <summary>So many strips of the shop's least width go into the panel.</summary>
    internal static void RequireFit(this PanelWish wish, Length width, DesignOptions options, Shop shop)
    {
        var most = shop.NarrowestStrip.IsPositive ? width.CountOf(shop.NarrowestStrip) : MostStrips;
        options.Require(wish.MinimumStrips <= Math.Max(2, most), Strips, DesignMessages.AtMost($"{Math.Max(2, most)}", "strips would be narrower than the shop glues"));
    }
}
