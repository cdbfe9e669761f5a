using CsCheck;
using Scrapwright.Core.Measures;
using Scrapwright.Planning.Cutting;

namespace Scrapwright.Planning.Tests.Cutting;

public sealed class BoardSolverTests
{
    private static readonly Gen<(int Length, int Width, int Count, int Value)> PartGen =
        Gen.Select(Gen.Int[1, 6], Gen.Int[1, 6], Gen.Int[1, 2], Gen.Int[1, 20]);

    private static Length Mm(long millimetres) => Length.FromMillimetres(millimetres);

    private static BoardLayout Solve(BoardProblem problem) => BoardSolver.Solve(problem, new BoardLimits(), TestContext.Current.CancellationToken);

    [Fact]
    public void A_picometre_too_much_costs_a_part()
    {
        var kerf = Length.FromInches(1, 8);
        var length = Length.FromInches(24);
        var half = (length - kerf).Divide(2, Rounding.Down);
        BoardProblem Two(Length part) => new(length, Length.FromInches(3), [new BoardPart(part, Length.FromInches(3), 7, 2)], kerf);

        Assert.Equal(14, Solve(Two(half)).Value);
        Assert.Equal(7, Solve(Two(half + Length.FromPicometres(1))).Value);
    }

    [Fact]
    public void Parts_that_can_only_lie_like_a_pinwheel_do_not_all_fit()
    {
        // Four of 3 × 2 round a square of 1 fill 5 × 5, but no cut goes right through.
        var problem = new BoardProblem(Mm(5), Mm(5), [new BoardPart(Mm(3), Mm(2), 6, 2), new BoardPart(Mm(2), Mm(3), 6, 2), new BoardPart(Mm(1), Mm(1), 1, 1)], Length.Zero);

        Assert.True(Solve(problem).Value < 25);
    }

    [Fact]
    public void Grain_forbids_turning()
    {
        BoardProblem Problem(bool mayTurn) => new(Mm(100), Mm(300), [new BoardPart(Mm(200), Mm(80), 5, 1, mayTurn)], Mm(3));

        Assert.Equal((0L, 0L), (Solve(Problem(false)).Value, Solve(Problem(false)).Bound));
        Assert.Equal(5, Solve(Problem(true)).Value);
    }

    [Fact]
    public void Sizes_with_no_common_measure_are_rounded_to_the_safe_side()
    {
        var parts = Enumerable.Range(1, 9).Select(i => SolidLayout.Part(Length.FromPicometres(61_234_567_891 + (i * 13_579_246_801L)), Length.FromPicometres(31_987_654_321 + (i * 1_357_924_679L)), 9));
        var problem = new BoardProblem(Mm(900), Mm(140), [.. parts], Length.FromInches(1, 8));

        var layout = BoardSolver.Solve(problem, new BoardLimits { MostPlaces = 120, MostPairs = 100_000 }, TestContext.Current.CancellationToken);

        Assert.True(layout.Value > 0);
        CutTrees.Check(problem, layout);
    }

    [Fact]
    public void No_layout_is_worth_more_than_the_one_found() =>
        Gen.Select(Gen.Int[3, 9], Gen.Int[3, 9], PartGen.Array[1, 3], Gen.Int[0, 1], Gen.Bool).Sample(
            (length, width, parts, kerf, mayTurn) =>
            {
                var problem = new BoardProblem(Mm(length), Mm(width), [.. parts.Select(p => new BoardPart(Mm(p.Length), Mm(p.Width), p.Value, p.Count, mayTurn))], Mm(kerf));

                var layout = Solve(problem);

                var most = new EveryLayout(parts, kerf, mayTurn).Most(length, width);
                Assert.Equal((most, most), (layout.Value, layout.Bound));
                CutTrees.Check(problem, layout);
            },
            iter: 150,
            threads: 1);

    [Fact]
    public void Without_limits_no_layout_is_worth_more_either() =>
        Gen.Select(Gen.Int[3, 10], Gen.Int[3, 10], PartGen.Array[1, 3], Gen.Int[0, 1]).Sample(
            (length, width, parts, kerf) =>
            {
                var problem = new BoardProblem(Mm(length), Mm(width), [.. parts.Select(p => new BoardPart(Mm(p.Length), Mm(p.Width), p.Value))], Mm(kerf));

                var layout = Solve(problem);

                var most = Most(length, width, parts, kerf, []);
                Assert.Equal((most, most), (layout.Value, layout.Bound));
                CutTrees.Check(problem, layout);
            },
            iter: 150,
            threads: 1);

    [Fact]
    public void Several_boards_share_the_parts_wanted()
    {
        var parts = new[] { SolidLayout.Part(Mm(300), Mm(60), 3), SolidLayout.Part(Mm(150), Mm(45), 4), SolidLayout.Part(Mm(500), Mm(90), 1) };
        var boards = new[] { (Mm(620), Mm(130)), (Mm(320), Mm(64)), (Mm(520), Mm(95)) };

        var (layouts, value, bound) = SolidLayout.OnBoards([.. boards], [.. parts], Mm(3), BoardLimits.Quick, TestContext.Current.CancellationToken);

        Assert.True(value <= bound);
        Assert.Equal(value, layouts.Sum(l => l.Value));
        Assert.All(layouts.Zip(boards), x => CutTrees.Check(new BoardProblem(x.Second.Item1, x.Second.Item2, [.. parts], Mm(3)), x.First));
        Assert.All(layouts.SelectMany(l => l.Tree.Parts()).GroupBy(p => p.Part), g => Assert.True(g.Count() <= parts[g.Key].Count));
        Assert.Equal(parts.Sum(p => p.Value * p.Count!.Value), value);
    }

    /// <summary>The most a rectangle is worth with copies without limit, cut at every whole place.</summary>
    private static long Most(int length, int width, (int Length, int Width, int Count, int Value)[] parts, int kerf, Dictionary<(int, int), long> known)
    {
        if (length <= 0 || width <= 0) return 0;
        if (known.TryGetValue((length, width), out var most)) return most;
        most = parts.Where(p => p.Length <= length && p.Width <= width).Select(p => (long)p.Value).DefaultIfEmpty().Max();
        for (var at = 1; at < length; at++) most = Math.Max(most, Most(at, width, parts, kerf, known) + Most(length - at - kerf, width, parts, kerf, known));
        for (var at = 1; at < width; at++) most = Math.Max(most, Most(length, at, parts, kerf, known) + Most(length, width - at - kerf, parts, kerf, known));
        return known[(length, width)] = most;
    }
}
