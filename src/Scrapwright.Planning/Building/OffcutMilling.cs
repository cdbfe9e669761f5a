using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Planning.Problems;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Building;

/// <summary>Takes one offcut from the pile to its strips, and what is left over.</summary>
internal sealed class OffcutMilling(Problem problem, Bench bench)
{
    private static readonly Stage FirstEdges = new(Operation.EdgeJoint);
    private static readonly Stage SawnEdges = new(Operation.EdgeJoint, 1);
    private readonly Shop shop = problem.Shop;

    /// <summary>The strips cut from the offcut; everything else goes to <paramref name="leftovers"/>.</summary>
    internal ImmutableArray<PlacedStrip> Mill(OffcutPattern pattern, ImmutableArray<Segment> segments, LeftoverList leftovers)
    {
        var offcut = pattern.Offcut;
        var piece = WholePiece(pattern);
        if (pattern.Route == Route.CrosscutFirst)
        {
            return CutToLength(pattern, piece, 0, segments, Paired, new Stage(Operation.RoughCrosscut), leftovers, s => TakeEdges(Faces(pattern, s)));
        }

        var strips = ImmutableArray.CreateBuilder<PlacedStrip>();
        foreach (var (index, lane) in Lanes(pattern, piece, segments))
        {
            ImmutableArray<Segment> mine = [.. segments.Where(s => s.Lane == index)];
            if (mine.IsEmpty)
            {
                leftovers.Add(lane);
            }
            else
            {
                strips.AddRange(CutToLength(pattern, lane, index, mine, Paired, new Stage(Operation.CrosscutStrips), leftovers, s => s));
            }
        }

        return strips.ToImmutable();

        int Paired(Segment segment) => SisterSegments.Paired(problem, segments, segment);
    }

    internal static Piece WholePiece(OffcutPattern pattern) => WholePiece(pattern.Offcut);

    internal static Piece WholePiece(Core.Pile.Offcut offcut) =>
        new(offcut.Label, offcut.Length, offcut.Width, offcut.Thickness, [new Lane(offcut.Label, offcut.Width)]);

    /// <summary>The lanes of the offcut, milled where they are used, by number; a strip of which no layer is used stays whole and stands for the first of its lanes.</summary>
    private IEnumerable<(int Lane, Piece Piece)> Lanes(OffcutPattern pattern, Piece piece, ImmutableArray<Segment> segments)
    {
        var strips = Strips(pattern, piece, [.. segments.Select(s => s.Lane / pattern.Layers).Distinct()]);
        return strips.SelectMany((strip, i) => Layers(pattern, strip, i * pattern.Layers, [.. segments.Select(s => s.Lane)]));
    }

    private IEnumerable<(int Lane, Piece Piece)> Layers(OffcutPattern pattern, Piece strip, int first, HashSet<int> used)
    {
        if (pattern.Layers == 1 || !Enumerable.Range(first, pattern.Layers).Any(used.Contains))
        {
            return [(first, strip)];
        }

        var layers = bench.Resaw(new Stage(Operation.ResawStrips), strip, pattern.Layers);
        return layers.Select((layer, i) => (first + i, used.Contains(first + i)
            ? bench.TakeThickness(new Stage(Operation.CleanSawnFaces), layer, shop.Allowances.ResawCleanUp.Mean)
            : layer));
    }

    /// <summary>The strips the offcut is ripped into, milled where they are used.</summary>
    private ImmutableArray<Piece> Strips(OffcutPattern pattern, Piece piece, HashSet<int> used)
    {
        var edge = shop.Allowances.EdgeJoint.Mean;
        if (pattern.Rips == 1)
        {
            return [TakeEdges(Faces(pattern, piece))];
        }

        var widths = pattern.Lanes.Where((_, i) => i % pattern.Layers == 0).Select(l => l.RoughWidth).ToImmutableArray();
        if (pattern.Route == Route.RipFirst)
        {
            var rough = bench.Rip(new Stage(Operation.RoughRip), piece, widths, shop.Bandsaw.Kerf);
            return [.. rough.Select((l, i) => used.Contains(i) ? TakeEdges(Faces(pattern, l)) : l)];
        }

        var milled = bench.TakeEdges(FirstEdges, Faces(pattern, piece), edge);
        var ripped = bench.Rip(new Stage(Operation.Rip), milled, widths.SetItem(0, widths[0] - edge), shop.TableSaw.Kerf);
        return [.. ripped.Select((l, i) => used.Contains(i) ? bench.TakeEdges(SawnEdges, l, i == 0 ? edge : edge * 2) : l)];
    }

    private Piece TakeEdges(Piece piece) => bench.TakeEdges(FirstEdges, piece, shop.Allowances.EdgeJoint.Mean * 2);

    private Piece Faces(OffcutPattern pattern, Piece piece)
    {
        var ladder = StripMilling.Thickness(pattern.Offcut, piece.Length, piece.Width, shop);
        foreach (var rung in ladder.Rungs)
        {
            piece = bench.TakeThickness(new Stage(rung.Operation), piece, rung.Taken);
        }

        return piece;
    }

    private ImmutableArray<PlacedStrip> CutToLength(
        OffcutPattern pattern, Piece lane, int laneIndex, ImmutableArray<Segment> segments, Func<Segment, int> paired, Stage stage,
        LeftoverList leftovers, Func<Piece, Piece> mill)
    {
        var kerf = shop.TableSaw.Kerf;
        if (stage.Operation == Operation.CrosscutStrips && IsBestLeftWhole(pattern, lane, segments))
        {
            return [Placed(pattern, segments[0], mill(lane), lane.Length, lane.Width)];
        }

        var outputs = LengthLayout.Of(pattern, laneIndex, segments, lane.Id, kerf, Needed, paired);
        var setting = outputs.First(o => o.Segment is not null).Length;
        var cut = outputs.Length == 1
            ? [lane]
            : bench.Crosscut(stage, lane, [.. outputs.Select(o => (o.Id, o.Length))], Length.Zero, setting);
        var strips = ImmutableArray.CreateBuilder<PlacedStrip>();
        for (var i = 0; i < cut.Length; i++)
        {
            if (outputs[i].Segment is { } segment)
            {
                var width = pattern.Rips == 1 ? pattern.Offcut.Width : pattern.Lanes[laneIndex].RoughWidth;
                strips.Add(Placed(pattern, segment, mill(cut[i]), cut[i].Length, width));
            }
            else
            {
                leftovers.Add(cut[i], outputs[i].IsDefect);
            }
        }

        return strips.ToImmutable();
    }

    /// <summary>A strip whose rest would be too short to keep stays whole: its glue-up trims the ends anyway.</summary>
    private bool IsBestLeftWhole(OffcutPattern pattern, Piece lane, ImmutableArray<Segment> segments) =>
        segments is [var only] && !pattern.IsCut(only.Lane) && pattern.RunsOf(only.Lane).ToArray() is [var run] && run.Run.Length == lane.Length
        && lane.Length - Needed(segments[0]) - shop.TableSaw.Kerf < shop.KeepLength;

    private Length Needed(Segment segment) => segment.NeededIn(problem);

    private PlacedStrip Placed(OffcutPattern pattern, Segment segment, Piece piece, Length length, Length width)
    {
        var (atLength, atWidth) = pattern.Route switch
        {
            Route.MillWhole => (pattern.Offcut.Length, pattern.Offcut.Width),
            Route.RipFirst => (pattern.Offcut.Length, pattern.Lanes[segment.Lane].RoughWidth),
            _ => (length, width),
        };
        return new PlacedStrip(segment, pattern, piece, pattern.Thickness(atLength, atWidth, shop).Spread);
    }
}
