using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans;

/// <summary>
/// What one step does to one piece (or, gluing and assembling, to several).
/// Cutting: the size cut equals <see cref="Taken"/> + <see cref="Cuts"/> × <see cref="Kerf"/> + the sum of the outputs' sizes.
/// Working a face or edge: output size = input size − <see cref="Taken"/>.
/// </summary>
public sealed record Work
{
    /// <summary>Ids of the pieces going in; for a glue-up in their order, lower edge first.</summary>
    public required ImmutableArray<string> In { get; init; }

    /// <summary>The pieces coming out, with their sizes; for cuts in their order from the marked end or lower edge.</summary>
    public required ImmutableArray<Piece> Out { get; init; }

    /// <summary>Wood taken off in the worked direction, kerfs between outputs not counted.</summary>
    public Length Taken { get; init; }

    /// <summary>Of <see cref="Taken"/>, what comes off the lower edge (trimming a panel) or the marked end (crosscutting).</summary>
    public Length TakenFirst { get; init; }

    /// <summary>Width of one cut.</summary>
    public Length Kerf { get; init; }

    /// <summary>How many cuts of that width lie between outputs.</summary>
    public int Cuts { get; init; }

    /// <summary>The number to set on the machine or to measure: fence, stop, thickness. Zero when there is none.</summary>
    public Length Setting { get; init; }

    /// <summary>How the piece is held or worked when it is below the station's limit.</summary>
    public Workaround Workaround { get; init; } = Workaround.None;
}
