using System.Numerics;

namespace Scrapwright.Planning.Cutting;

/// <summary>A board problem in whole numbers: a kerf added to each part and to the board on both sides, so that pieces just add up.</summary>
internal sealed class BoardSizes
{
    private BoardSizes(BoardShape[] shapes, int[] counts, long[] values, BoardPlaces along, BoardPlaces across, long mark, bool isExact)
    {
        (Shapes, Counts, Values, Along, Across, Mark, IsExact) = (shapes, counts, values, along, across, mark, isExact);
    }

    /// <summary>The parts that fit, as they can lie.</summary>
    internal BoardShape[] Shapes { get; }

    /// <summary>Most copies of each part; as many as fit by area where the problem has no limit.</summary>
    internal int[] Counts { get; }

    /// <summary>Value of each part.</summary>
    internal long[] Values { get; }

    internal BoardPlaces Along { get; }

    internal BoardPlaces Across { get; }

    /// <summary>One mark. [pm]</summary>
    internal long Mark { get; }

    /// <summary>False when sizes were rounded: the layout holds, its bound does not.</summary>
    internal bool IsExact { get; }

    /// <summary>The problem on the greatest common measure of its sizes; on tenths of a millimetre, and coarser as need be, when that gives too many places.</summary>
    internal static BoardSizes Of(BoardProblem problem, int mostPlaces)
    {
        var kerf = problem.Kerf.Picometres;
        var measure = problem.Parts.SelectMany(p => new[] { p.Length.Picometres + kerf, p.Width.Picometres + kerf })
            .Aggregate(0L, (a, b) => (long)BigInteger.GreatestCommonDivisor(a, b));
        var exact = Find(problem, Math.Max(1, measure), true, mostPlaces);
        for (var mark = 100_000_000L; exact is null; mark *= 2) exact = Find(problem, mark, false, mostPlaces);
        return exact;
    }

    private static BoardSizes? Find(BoardProblem problem, long mark, bool isExact, int mostPlaces)
    {
        var kerf = problem.Kerf.Picometres;
        var length = (problem.Length.Picometres + kerf) / mark;
        var width = (problem.Width.Picometres + kerf) / mark;
        var shapes = new List<BoardShape>();
        for (var p = 0; p < problem.Parts.Length; p++)
        {
            var part = problem.Parts[p];
            var (l, w) = (Up(part.Length.Picometres + kerf, mark), Up(part.Width.Picometres + kerf, mark));
            if (l <= length && w <= width) shapes.Add(new BoardShape(p, false, l, w));
            if (part.MayTurn && l != w && w <= length && l <= width) shapes.Add(new BoardShape(p, true, w, l));
        }

        var counts = problem.Parts.Select((part, p) => (int)Math.Min(part.Count ?? int.MaxValue, shapes.Where(s => s.Part == p).Select(s => length / s.Length * (width / s.Width)).DefaultIfEmpty().Sum())).ToArray();
        var along = BoardPlaces.Find(shapes.Select(s => (s.Length, (long)counts[s.Part])), length, mostPlaces);
        var across = along is null ? null : BoardPlaces.Find(shapes.Select(s => (s.Width, (long)counts[s.Part])), width, mostPlaces);
        return along is null || across is null ? null : new BoardSizes([.. shapes], counts, [.. problem.Parts.Select(p => p.Value)], along, across, mark, isExact);
    }

    private static long Up(long picometres, long mark) => (picometres + mark - 1) / mark;
}
