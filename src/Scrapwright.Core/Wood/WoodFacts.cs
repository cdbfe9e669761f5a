using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Wood;

/// <summary>What the bench wants to know of one species, on one page.</summary>
public sealed record WoodFacts
{
    private WoodFacts()
    {
    }

    /// <summary>Width of the board whose movement is given: 4 in, or 101.6 mm. Our own choice.</summary>
    public static Length Board { get; } = Length.FromInches(4);

    /// <summary>The moisture it goes from: a heated home in winter. [%]; our own choice.</summary>
    public const double DryPercent = 6;

    /// <summary>The moisture it goes to: a home in a damp summer. [%]; our own choice.</summary>
    public const double DampPercent = 12;

    /// <summary>The wood.</summary>
    public required Species Species { get; init; }

    /// <summary>How much the flat-sawn board widens from dry to damp; null when nothing is known.</summary>
    public required Length? FlatMovement { get; init; }

    /// <summary>How much the quarter-sawn board widens from dry to damp; null when nothing is known.</summary>
    public required Length? QuarterMovement { get; init; }

    /// <summary>Colour of fresh heartwood.</summary>
    public LabColour Fresh => Species.Colour;

    /// <summary>The same under oil. Estimate.</summary>
    public LabColour Oiled => ColourChange.Oiled(Species.Colour);

    /// <summary>The same after some years. Estimate.</summary>
    public LabColour Aged => ColourChange.Aged(Species);

    /// <summary>What the years do, in words.</summary>
    public string AgedInWords => ColourChange.AgedInWords(Species);

    /// <summary>What to wear and do against its dust.</summary>
    public DustCare DustCare => DustCare.For(Species);

    /// <summary>The dust limits that are for it.</summary>
    public ImmutableArray<DustLimit> DustLimits => Wood.DustLimits.For(Species);

    /// <summary>What each value is and where it comes from, in the page's order.</summary>
    public required ImmutableArray<(string Value, ValueSource Source)> Sources { get; init; }

    /// <summary>The facts of a species.</summary>
    /// <param name="species">The wood.</param>
    public static WoodFacts For(Species species)
    {
        ArgumentNullException.ThrowIfNull(species);
        return new WoodFacts
        {
            Species = species,
            FlatMovement = MoistureMovement.WidthChange(species, RingOrientation.Flat, Board, DryPercent, DampPercent)?.Change,
            QuarterMovement = MoistureMovement.WidthChange(species, RingOrientation.Quarter, Board, DryPercent, DampPercent)?.Change,
            Sources = [.. SourcesOf(species)],
        };
    }

    private static IEnumerable<(string Value, ValueSource Source)> SourcesOf(Species species)
    {
        if (MoistureMovement.WidthChange(species, RingOrientation.Flat, Board, DryPercent, DampPercent)?.Source is { } movement)
        {
            yield return ("Movement", movement);
        }

        yield return ("Density", species.Sources.SpecificGravity);
        if (species.Sources.SideHardness is { } hardness)
        {
            yield return ("Hardness", hardness);
        }

        yield return ("Colour", species.Sources.Colour);
        yield return ("Botanical name", species.Sources.ScientificName);
    }
}
