using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Planning.Cutting;

/// <summary>Lays solid parts out on clear boards by rips and crosscuts, along the grain, so that most wood goes into parts.</summary>
internal static class SolidLayout
{
    /// <summary>A rough part is worth its area. [mm², rounded down, at least 1]</summary>
    /// <param name="length">Along the grain.</param>
    /// <param name="width">Across the grain.</param>
    /// <param name="count">How many are wanted.</param>
    internal static BoardPart Part(Length length, Length width, int count) =>
        new(length, width, Math.Max(1, (long)((Int128)length.Picometres * width.Picometres / SquareMillimetre)), count);

    /// <summary>The layout of one clear board.</summary>
    internal static BoardLayout OnBoard(Length length, Length width, ImmutableArray<BoardPart> parts, Length kerf, BoardLimits limits, CancellationToken cancellationToken = default) =>
        BoardSolver.Solve(new BoardProblem(length, width, parts, kerf), limits, cancellationToken);

    /// <summary>Layouts of several clear boards, in their order; no part is laid out more often than it is wanted. Board after board, smallest first and largest first, the better way: not exact, but with a bound.</summary>
    internal static (ImmutableArray<BoardLayout> Layouts, long Value, long Bound) OnBoards(
        ImmutableArray<(Length Length, Length Width)> boards, ImmutableArray<BoardPart> parts, Length kerf, BoardLimits limits, CancellationToken cancellationToken = default)
    {
        var rising = Enumerable.Range(0, boards.Length).OrderBy(b => (Int128)boards[b].Length.Picometres * boards[b].Width.Picometres).ToArray();
        var ways = new[] { rising, [.. rising.Reverse()] }.Select(order => InOrder(order, boards, parts, kerf, limits, cancellationToken)).ToArray();
        var best = ways.MaxBy(layouts => layouts.Sum(l => l.Value));
        var alone = boards.Sum(b => OnBoard(b.Length, b.Width, parts, kerf, limits, cancellationToken).Bound);
        var bound = parts.All(p => p.Count is not null) ? Math.Min(alone, parts.Sum(p => p.Value * p.Count!.Value)) : alone;
        return (best, best.Sum(l => l.Value), bound);
    }

    private static readonly Int128 SquareMillimetre = (Int128)Length.FromMillimetres(1).Picometres * Length.FromMillimetres(1).Picometres;

    private static ImmutableArray<BoardLayout> InOrder(
        int[] order, ImmutableArray<(Length Length, Length Width)> boards, ImmutableArray<BoardPart> parts, Length kerf, BoardLimits limits, CancellationToken cancellationToken)
    {
        var left = parts.Select(p => p.Count).ToArray();
        var layouts = new BoardLayout[boards.Length];
        foreach (var b in order)
        {
            var wanted = Enumerable.Range(0, parts.Length).Where(p => left[p] != 0).ToArray();
            var layout = OnBoard(boards[b].Length, boards[b].Width, [.. wanted.Select(p => parts[p] with { Count = left[p] })], kerf, limits, cancellationToken);
            layouts[b] = layout with { Tree = Renumber(layout.Tree, wanted) };
            foreach (var placed in layouts[b].Tree.Parts()) left[placed.Part]--;
        }

        return [.. layouts];
    }

    private static CutTree Renumber(CutTree tree, int[] wanted) => tree switch
    {
        CutTree.Crosscut c => c with { First = Renumber(c.First, wanted), Second = Renumber(c.Second, wanted) },
        CutTree.Rip r => r with { First = Renumber(r.First, wanted), Second = Renumber(r.Second, wanted) },
        CutTree.Placed p => p with { Part = wanted[p.Part] },
        _ => tree,
    };
}
