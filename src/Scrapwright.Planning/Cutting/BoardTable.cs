using System.Numerics;
using System.Runtime.InteropServices;

namespace Scrapwright.Planning.Cutting;

/// <summary>The most that any rectangle of the board is worth when copies are without limit, by dynamic programming over the places. Source of the method: [GilmoreGomory1965].</summary>
internal sealed class BoardTable
{
    private readonly BoardSizes sizes;
    private readonly long[] values;
    private readonly long[] best;
    private readonly int rows;

    /// <summary>Works the table out.</summary>
    /// <param name="sizes">The problem.</param>
    /// <param name="values">Value of each part; a part worth nothing or less is left out.</param>
    internal BoardTable(BoardSizes sizes, long[] values)
    {
        (this.sizes, this.values) = (sizes, values);
        rows = sizes.Across.Count;
        best = new long[sizes.Along.Count * rows];
        foreach (var shape in sizes.Shapes)
        {
            ref var cell = ref best[(sizes.Along.At(shape.Length) * rows) + sizes.Across.At(shape.Width)];
            cell = Math.Max(cell, values[shape.Part]);
        }

        for (var x = 1; x < sizes.Along.Count; x++) Fill(x);
    }

    /// <summary>Steps that one table takes, roughly.</summary>
    internal static long StepsFor(BoardSizes sizes) => (long)sizes.Along.Count * sizes.Across.Count * (sizes.Along.Count + sizes.Across.Count) / 4;

    /// <summary>The most the whole board is worth.</summary>
    internal long Most => best[^1];

    internal ReadOnlySpan<long> Column(int x) => best.AsSpan(x * rows, rows);

    /// <summary>The most the rectangle from the corner to a place is worth.</summary>
    internal long At(int x, int y) => best[(x * rows) + y];

    private void Fill(int x)
    {
        var column = best.AsSpan(x * rows, rows);
        var marks = sizes.Along.Marks;
        MaxInto(column, Column(x - 1), default);
        for (var first = 1; first < x && marks[first] * 2 <= marks[x]; first++)
        {
            MaxInto(column, Column(first), Column(sizes.Along.Between(first, x)));
        }

        var widths = sizes.Across.Marks;
        for (var y = 1; y < rows; y++)
        {
            var most = Math.Max(column[y], column[y - 1]);
            var rest = sizes.Across.BetweenRow(y);
            unchecked
            {
                for (var first = 1; first < y && widths[first] * 2 <= widths[y]; first++)
                {
                    most = Math.Max(most, column[first] + column[rest[first]]);
                }
            }

            column[y] = most;
        }
    }

    /// <summary>Each of <paramref name="into"/> becomes at least <paramref name="a"/> + <paramref name="b"/>.</summary>
    internal static void MaxInto(Span<long> into, ReadOnlySpan<long> a, ReadOnlySpan<long> b)
    {
        var target = MemoryMarshal.Cast<long, Vector<long>>(into);
        var left = MemoryMarshal.Cast<long, Vector<long>>(a);
        var right = MemoryMarshal.Cast<long, Vector<long>>(b);
        var done = target.Length * Vector<long>.Count;
        if (b.IsEmpty)
        {
            for (var i = 0; i < target.Length; i++) target[i] = Vector.Max(target[i], left[i]);
            for (var i = done; i < into.Length; i++) into[i] = Math.Max(into[i], a[i]);
            return;
        }

        for (var i = 0; i < target.Length; i++) target[i] = Vector.Max(target[i], left[i] + right[i]);
        for (var i = done; i < into.Length; i++) into[i] = Math.Max(into[i], a[i] + b[i]);
    }

    /// <summary>A best way to put the whole board together; null when nothing fits.</summary>
    internal BoardBuild? Build() => Build(sizes.Along.Count - 1, rows - 1);

    private BoardBuild? Build(int x, int y)
    {
        var value = At(x, y);
        if (value == 0) return null;
        while (x > 0 && At(x - 1, y) == value) x--;
        while (y > 0 && At(x, y - 1) == value) y--;
        var (length, width) = (sizes.Along.Marks[x], sizes.Across.Marks[y]);
        foreach (var shape in sizes.Shapes)
        {
            if (shape.Length == length && shape.Width == width && values[shape.Part] == value) return new BoardBuild.One(shape);
        }

        for (var first = 1; first < x; first++)
        {
            var rest = sizes.Along.Between(first, x);
            if (At(first, y) + At(rest, y) == value) return Pair(Build(first, y), Build(rest, y), true);
        }

        for (var first = 1; first < y; first++)
        {
            var rest = sizes.Across.Between(first, y);
            if (At(x, first) + At(x, rest) == value) return Pair(Build(x, first), Build(x, rest), false);
        }

        throw new InvalidOperationException($"No cut gives the value of place {x}, {y}.");
    }

    private static BoardBuild? Pair(BoardBuild? first, BoardBuild? second, bool isEndToEnd) =>
        first is null ? second : second is null ? first : isEndToEnd ? new BoardBuild.EndToEnd(first, second) : new BoardBuild.SideBySide(first, second);
}
