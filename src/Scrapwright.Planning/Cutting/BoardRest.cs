namespace Scrapwright.Planning.Cutting;

/// <summary>For a rectangle in the corner of the board, the most that all the board round it is worth when copies are without limit.</summary>
/// <remarks>
/// The rectangle is made longer or wider, one piece at a time, until it is the board; each piece is worth no more than the table says. Method of Viswanathan and Bagchi: [ViswanathanBagchi1993].
/// </remarks>
internal sealed class BoardRest
{
    private readonly long[] most;
    private readonly int rows;

    internal BoardRest(BoardSizes sizes, BoardTable table)
    {
        rows = sizes.Across.Count;
        most = new long[sizes.Along.Count * rows];
        var across = sizes.Across;
        for (var x = sizes.Along.Count - 1; x > 0; x--)
        {
            var column = most.AsSpan(x * rows, rows);
            for (var to = sizes.Along.Count - 1; to > x; to--)
            {
                BoardTable.MaxInto(column, most.AsSpan(to * rows, rows), table.Column(sizes.Along.Between(x, to)));
            }

            var own = table.Column(x);
            for (var y = rows - 1; y > 0; y--)
            {
                var best = column[y];
                unchecked
                {
                    for (var to = rows - 1; to > y; to--) best = Math.Max(best, column[to] + own[across.Between(y, to)]);
                }

                column[y] = best;
            }
        }
    }

    /// <summary>The most round the rectangle from the corner to a place.</summary>
    internal long At(int x, int y) => most[(x * rows) + y];
}
