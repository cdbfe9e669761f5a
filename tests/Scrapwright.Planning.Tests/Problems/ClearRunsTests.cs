using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Tests.Problems;

public sealed class ClearRunsTests
{
    private static readonly Length Kerf = Length.FromInches(1, 8);

    private static Offcut With(params (int From, int To)[] inches) => Requests.Offcut("X1", "black-walnut", 20 * 16, 32, 14) with
    {
        Defects = [.. inches.Select(d => new Defect(DefectKind.Knot, Length.FromInches(d.From), Length.FromInches(d.To)))],
    };

    [Fact]
    public void A_clear_offcut_is_one_run() =>
        Assert.Equal([new ClearRun(Length.Zero, Length.FromInches(20))], ClearRuns.Of(With(), Kerf));

    [Fact]
    public void A_knot_in_the_middle_leaves_a_run_on_each_side() =>
        Assert.Equal(
            [new ClearRun(Length.Zero, Length.FromInches(4)), new ClearRun(Length.FromInches(5), Length.FromInches(20))],
            ClearRuns.Of(With((4, 5)), Kerf));

    [Fact]
    public void Defects_that_touch_are_one() =>
        Assert.Equal(2, ClearRuns.Of(With((4, 6), (6, 7), (5, 7)), Kerf).Length);

    [Fact]
    public void A_defect_at_the_end_leaves_one_run() =>
        Assert.Equal(new ClearRun(Length.FromInches(2), Length.FromInches(20)), Assert.Single(ClearRuns.Of(With((0, 2)), Kerf)));

    [Fact]
    public void A_defect_all_along_leaves_nothing() => Assert.Empty(ClearRuns.Of(With((0, 25)), Kerf));

    [Fact]
    public void A_pinhole_is_given_room_for_both_cuts()
    {
        var runs = ClearRuns.Of(With((10, 10)), Kerf);

        Assert.Equal((Kerf * 2) + Length.FromMillimetres(1), runs[1].From - runs[0].To);
    }
}
