using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Designs;

/// <summary>
/// One kind of part of a product, at finished size: the box it fills before holes, laps and mitres are cut into it.
/// For a rod, <see cref="Width"/> and <see cref="Thickness"/> are its diameter.
/// </summary>
public sealed record Part
{
    /// <summary>Name in files, unique within the product.</summary>
    public required string Key { get; init; }

    /// <summary>Name on screens and paper.</summary>
    public required string Title { get; init; }

    /// <summary>Where it comes from.</summary>
    public required PartKind Kind { get; init; }

    /// <summary>Finished size along the grain.</summary>
    public required Length Length { get; init; }

    /// <summary>Finished size across the grain.</summary>
    public required Length Width { get; init; }

    /// <summary>Finished thickness, after sanding.</summary>
    public required Length Thickness { get; init; }

    /// <summary>How many alike.</summary>
    public required int Count { get; init; }

    /// <summary>Holes, from the part's own lower left corner.</summary>
    public ImmutableArray<Hole> Holes { get; init; } = [];

    /// <summary>Half-lap notches.</summary>
    public ImmutableArray<Notch> Notches { get; init; } = [];

    /// <summary>Which ends are mitred at 45 degrees; the part's length is measured over the long side.</summary>
    public MitredEnds Mitres { get; init; } = MitredEnds.None;

    /// <summary>How the edges are treated.</summary>
    public EdgeTreatment Edge { get; init; } = EdgeTreatment.Eased;

    /// <summary>Size of the edge treatment; zero for eased by hand.</summary>
    public Length EdgeSize { get; init; }

    /// <summary>How the strips of a panel part shall look; null for solid parts and rods.</summary>
    public PanelWish? Wish { get; init; }

    /// <summary>Species wished for a solid part or rod, keys, best first; empty for any.</summary>
    public ImmutableArray<string> Species { get; init; } = [];

    /// <summary>True when another part fills the same box.</summary>
    public bool HasSizeOf(Part other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return (Length, Width, Thickness) == (other.Length, other.Width, other.Thickness);
    }
}
