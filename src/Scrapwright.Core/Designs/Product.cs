using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Designs;

/// <summary>What a design gives for one set of options.</summary>
public sealed record Product
{
    /// <summary>Key of the family.</summary>
    public required string Family { get; init; }

    /// <summary>One line that names it: 4 striped squares, 4 in.</summary>
    public required string Summary { get; init; }

    /// <summary>All parts.</summary>
    public required ImmutableArray<Part> Parts { get; init; }

    /// <summary>Every solid part, in runs cut along one board.</summary>
    public ImmutableArray<GrainRun> Runs { get; init; } = [];

    /// <summary>Joints.</summary>
    public ImmutableArray<Joint> Joints { get; init; } = [];

    /// <summary>Openings and what goes into them.</summary>
    public ImmutableArray<Fit> Fits { get; init; } = [];

    /// <summary>What to do with the cut parts, in order.</summary>
    public ImmutableArray<AssemblyStep> Assembly { get; init; } = [];

    /// <summary>The set of squares it is or holds; null when it has to do with none.</summary>
    public StackedSet? Set { get; init; }

    /// <summary>Outer size of the assembled thing: along, across, up.</summary>
    public required (Length Along, Length Across, Length Up) Outside { get; init; }

    /// <summary>What to mind, beyond what every station says.</summary>
    public ImmutableArray<string> Cautions { get; init; } = [];
}
