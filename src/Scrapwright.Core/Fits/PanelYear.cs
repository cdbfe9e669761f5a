using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Fits;

/// <summary>Works a panel's movement out between the day it is made and both ends of a year.</summary>
internal sealed class PanelYear(ImmutableArray<MovingWood> strips, Length thickness, double madePercent, MoistureYear livesIn)
{
    private readonly double driestPercent = livesIn.DriestPercent;
    private readonly double dampestPercent = livesIn.DampestPercent;

    /// <param name="names">Id and offcut of a strip by its place.</param>
    internal PanelMovement Work(Func<int, (string Piece, string Offcut)> names) => new()
    {
        MadePercent = madePercent,
        DriestPercent = driestPercent,
        DampestPercent = dampestPercent,
        Width = Length.Sum(strips.Select(s => s.Size)),
        WidthInDriest = MovedLength.Change(strips.Sum(s => WidthMm(s, driestPercent))),
        WidthInDampest = MovedLength.Change(strips.Sum(s => WidthMm(s, dampestPercent))),
        Strips = [.. strips.Select((s, i) => Strip(s, names(i)))],
        Neighbours = [.. Enumerable.Range(0, strips.Length - 1).Select(Neighbours)],
    };

    private StripMovement Strip(MovingWood strip, (string Piece, string Offcut) name) => new()
    {
        Piece = name.Piece,
        Offcut = name.Offcut,
        Species = strip.Species,
        Rings = strip.Rings,
        Width = strip.Size,
        WidthInDriest = MovedLength.Change(WidthMm(strip, driestPercent)),
        WidthInDampest = MovedLength.Change(WidthMm(strip, dampestPercent)),
        ThicknessInDriest = MovedLength.Change(ThicknessMm(strip, driestPercent)),
        ThicknessInDampest = MovedLength.Change(ThicknessMm(strip, dampestPercent)),
        Cup = Cup(strip),
    };

    private double WidthMm(MovingWood strip, double toPercent) => strip.Size.Millimetres * WoodStrain.Larger(strip, madePercent, toPercent);

    private double ThicknessMm(MovingWood strip, double toPercent) => thickness.Millimetres * WoodStrain.Larger(Upright(strip), madePercent, toPercent);

    private CupTendency? Cup(MovingWood strip)
    {
        // A strip wider than the tree it is assumed to come from has rings that are nearly flat: it is taken as wide as the tree.
        var most = (Cupping.AssumedRingRadius * 2) - Length.FromPicometres(1);
        if (SpeciesTable.FindKey(strip.Species) is not { } species) return null;
        return new[] { driestPercent, dampestPercent }
            .Select(to => Cupping.Estimate(species, strip.Rings, Length.Min(strip.Size, most), madePercent, to))
            .MaxBy(c => c?.Depth ?? Length.Zero);
    }

    private NeighbourMovement Neighbours(int first)
    {
        var (one, other) = (Upright(strips[first]), Upright(strips[first + 1]));
        var strain = new[] { driestPercent, dampestPercent }.Max(to => Apart(WoodStrain.Range(one, madePercent, to), WoodStrain.Range(other, madePercent, to)));
        var ridge = MovedLength.Change(thickness.Millimetres * strain);
        return new(first, strain * 100, ridge, one.Rings == RingOrientation.Unknown || other.Rings == RingOrientation.Unknown, ridge >= PanelMovement.FeltRidge);
    }

    private static double Apart(StrainRange one, StrainRange other) => Math.Max(Math.Abs(one.High - other.Low), Math.Abs(other.High - one.Low));

    private static MovingWood Upright(MovingWood strip) => strip with { Direction = GrainDirection.Thickness };
}
