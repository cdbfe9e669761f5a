using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Fits;

/// <summary>
/// One copy of a part, seen in one direction. Across its width its strips add up. In its thickness the strip that stands highest counts:
/// it is what the next thing lies on. Along its grain it does not move.
/// </summary>
internal sealed record MovingBody(GrainDirection Direction, ImmutableArray<MovingWood> Woods)
{
    internal static MovingBody Still { get; } = new(GrainDirection.Along, []);

    /// <summary>How much longer it gets, for each unit of its size.</summary>
    internal StrainRange Strain(double fromPercent, double toPercent)
    {
        if (Direction == GrainDirection.Along || Woods.IsEmpty) return default;
        var strains = Woods.Select(w => WoodStrain.Range(w, fromPercent, toPercent)).ToArray();
        return Direction == GrainDirection.Thickness
            ? new(strains.Max(s => s.Low), strains.Max(s => s.High))
            : new(Mean(strains.Select(s => s.Low)), Mean(strains.Select(s => s.High)));
    }

    /// <summary>How far it gets from a thing that stays as it is: in its thickness the strip that goes farthest. Strips whose rings nobody has looked at move tangentially.</summary>
    internal double Farthest(double fromPercent, double toPercent)
    {
        if (Direction == GrainDirection.Along || Woods.IsEmpty) return 0;
        var strains = Woods.Select(w => WoodStrain.Larger(w, fromPercent, toPercent));
        return Direction == GrainDirection.Thickness ? strains.Max(Math.Abs) : Math.Abs(Mean(strains));
    }

    private double Mean(IEnumerable<double> strains)
    {
        double whole = 0, moved = 0;
        foreach (var (wood, strain) in Woods.Zip(strains))
        {
            whole += wood.Size.Millimetres;
            moved += wood.Size.Millimetres * strain;
        }

        return whole == 0 ? 0 : moved / whole;
    }
}
