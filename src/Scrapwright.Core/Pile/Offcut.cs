using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Pile;

/// <summary>
/// One entry of the pile: a piece of wood on hand, or <see cref="Count"/> alike pieces.
/// Sizes are as measured with a rule or calliper, before any work.
/// </summary>
public sealed record Offcut
{
    /// <summary>What is written on the wood; unique in the pile, 1 to 12 letters, digits or hyphens.</summary>
    public required string Label { get; init; }

    /// <summary>Key of the species in <see cref="SpeciesTable"/>.</summary>
    public required string Species { get; init; }

    /// <summary>Size along the grain; above zero.</summary>
    public required Length Length { get; init; }

    /// <summary>Size across the grain, the wider of the two; above zero.</summary>
    public required Length Width { get; init; }

    /// <summary>Thickness of the wood itself by calliper, not the height a warped piece takes up; above zero.</summary>
    public required Length Thickness { get; init; }

    /// <summary>How many alike pieces this entry stands for; at least 1.</summary>
    public int Count { get; init; } = 1;

    /// <summary>State of the wide faces.</summary>
    public Faces Faces { get; init; } = Faces.Rough;

    /// <summary>How the growth rings stand in the end grain.</summary>
    public RingOrientation Rings { get; init; } = RingOrientation.Unknown;

    /// <summary>Hollow across the full width (sagitta); zero when flat.</summary>
    public Length Cup { get; init; }

    /// <summary>Hollow along the full length of the face (sagitta); zero when flat.</summary>
    public Length Bow { get; init; }

    /// <summary>How far one corner stands off a flat bench; zero when flat.</summary>
    public Length Twist { get; init; }

    /// <summary>What is wrong with it, and where.</summary>
    public ImmutableArray<Defect> Defects { get; init; } = [];

    /// <summary>The defects that a plan must cut round.</summary>
    public IEnumerable<Defect> ToCutRound() => Defects.Where(d => !d.IsKept);

    /// <summary>Anything else the maker wrote.</summary>
    public string Note { get; init; } = "";

    /// <summary>The single pieces this entry stands for: itself, or copies labelled with a, b, c … (aa after z).</summary>
    public ImmutableArray<Offcut> Pieces()
    {
        if (Count == 1)
        {
            return [this];
        }

        var pieces = ImmutableArray.CreateBuilder<Offcut>(Count);
        for (var i = 0; i < Count; i++)
        {
            pieces.Add(this with { Label = Label + Letters(i), Count = 1 });
        }

        return pieces.MoveToImmutable();
    }

    private static string Letters(int index) =>
        index < 26 ? ((char)('a' + index)).ToString() : Letters((index / 26) - 1) + (char)('a' + (index % 26));
}
