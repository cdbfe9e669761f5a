using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;

namespace Scrapwright.Core.Plans;

/// <summary>Strips edge to edge, with their order and what becomes of the panel.</summary>
public sealed record GlueUp
{
    /// <summary>Its name on sheets: G1, G2 …</summary>
    public required string Id { get; init; }

    /// <summary>The gift it is for.</summary>
    public required string Gift { get; init; }

    /// <summary>Key of the panel part cut from it.</summary>
    public required string Part { get; init; }

    /// <summary>Other gifts that get pieces of it, after the first has all of its own; empty for a glue-up of one gift.</summary>
    public ImmutableArray<GlueUpShare> Also { get; init; } = [];

    /// <summary>Blanks crosscut along each layer.</summary>
    public required int Blanks { get; init; }

    /// <summary>Layers resawn from the panel; 1 for none.</summary>
    public required int Layers { get; init; }

    /// <summary>The strips, lower edge first.</summary>
    public required ImmutableArray<Strip> Strips { get; init; }

    /// <summary>Shared length of the strips: the panel's length before its ends are squared.</summary>
    public required Length Overlap { get; init; }

    /// <summary>Sum of the strips' net widths.</summary>
    public required Length RoughWidth { get; init; }

    /// <summary>Width the blanks need after trimming.</summary>
    public required Length TargetWidth { get; init; }

    /// <summary>Thickness of one layer from the glue-up to finished.</summary>
    public required Ladder ThicknessLadder { get; init; }

    /// <summary>Width from the glue-up to trimmed.</summary>
    public required Ladder WidthLadder { get; init; }

    /// <summary>Chance that the panel holds width and thickness, in thousandths, rounded down.</summary>
    public required int ChancePerMille { get; init; }

    /// <summary>Least CIEDE2000 difference between neighbours in hundredths, rounded down; 0 for a single strip.</summary>
    public required int LeastContrastHundredths { get; init; }

    /// <summary>How many clamps of sufficient reach it needs.</summary>
    public required int ClampsNeeded { get; init; }

    /// <summary>True when a gift gets pieces of it.</summary>
    public bool IsFor(string gift) => Gift == gift || Also.Any(a => a.Gift == gift);

    /// <summary>True when copies of a gift's part are cut from it.</summary>
    public bool IsFor(string gift, string part) => (Gift == gift && Part == part) || Also.Any(a => a.Gift == gift && a.Part == part);

    /// <summary>Keys of a gift's parts that are cut from it; empty when none.</summary>
    public IEnumerable<string> PartsOf(string gift) => Also.Where(a => a.Gift == gift).Select(a => a.Part).Prepend(Gift == gift ? Part : "").Where(p => p.Length > 0);

    /// <summary>Labels of the gifts that get pieces of it, the one it is named for first.</summary>
    public IEnumerable<string> ForGifts() => [Gift, .. Also.Select(a => a.Gift)];
}
