using Scrapwright.Core.Measures;
using Scrapwright.Planning.Cutting;

namespace Scrapwright.Planning.Tests.Cutting;

/// <summary>Published guillotine instances with known optima: sizes from [EsicupDatasets]; unlimited from [Cintra2008] and [HifiZissimopoulos1996], limited from [WangBaldacci2025].</summary>
public sealed class BoardSolverReferenceTests
{
    // Board; length, width, most copies, value of each part.
    private static readonly Dictionary<string, (int Length, int Width, int[][] Parts)> Instances = new()
    {
        ["cgcut2"] = (40, 70,
        [
            [21, 22, 1, 582], [31, 13, 1, 403], [9, 35, 3, 315], [9, 24, 3, 216], [30, 7, 2, 210], [11, 13, 3, 143],
            [10, 14, 1, 140], [14, 8, 3, 110], [12, 8, 3, 94], [13, 7, 3, 90],
        ]),
        ["cgcut3"] = (40, 70,
        [
            [31, 43, 4, 500], [30, 41, 2, 480], [29, 39, 4, 460], [28, 38, 4, 440], [27, 37, 3, 420], [26, 36, 4, 410],
            [25, 35, 3, 400], [24, 34, 4, 380], [33, 23, 4, 360], [22, 32, 3, 340], [31, 21, 3, 320], [29, 18, 3, 300],
            [17, 27, 2, 280], [15, 24, 2, 240], [16, 25, 4, 260], [15, 24, 1, 240], [23, 14, 4, 220], [21, 12, 3, 180],
            [19, 11, 4, 160], [9, 17, 1, 140],
        ]),
        ["gcut1"] = (250, 250,
        [
            [167, 184, 1, 30728], [114, 118, 1, 13452], [167, 152, 1, 25384], [83, 140, 1, 11620], [70, 86, 1, 6020], [143, 166, 1, 23738],
            [120, 160, 1, 19200], [66, 148, 1, 9768], [87, 141, 1, 12267], [69, 165, 1, 11385],
        ]),
        ["gcut2"] = (250, 250,
        [
            [120, 133, 1, 15960], [135, 186, 1, 25110], [86, 75, 1, 6450], [103, 73, 1, 7519], [66, 85, 1, 5610], [135, 97, 1, 13095],
            [91, 175, 1, 15925], [131, 176, 1, 23056], [71, 176, 1, 12496], [153, 72, 1, 11016], [87, 148, 1, 12876], [168, 107, 1, 17976],
            [118, 90, 1, 10620], [140, 109, 1, 15260], [132, 159, 1, 20988], [152, 93, 1, 14136], [135, 68, 1, 9180], [121, 158, 1, 19118],
            [68, 94, 1, 6392], [155, 76, 1, 11780],
        ]),
    };

    [Theory]
    [InlineData("gcut1", 56460)] // [Cintra2008] table of results, fixed orientation
    [InlineData("gcut2", 60536)] // [Cintra2008]
    [InlineData("cgcut3", 2240)] // [HifiZissimopoulos1996]
    public void Unlimited_copies(string name, long optimum) => Check(Problem(name, isLimited: false, mayTurn: false), optimum);

    [Theory]
    [InlineData("gcut1", 58136)] // [Cintra2008] table of results, 90-degree rotation
    [InlineData("gcut2", 60611)] // [Cintra2008]
    public void Unlimited_copies_that_may_turn(string name, long optimum) => Check(Problem(name, isLimited: false, mayTurn: true), optimum);

    [Theory]
    [InlineData("gcut1", 48368)] // [WangBaldacci2025] one copy of each
    [InlineData("gcut2", 59307)] // [WangBaldacci2025] one copy of each
    [InlineData("cgcut2", 2892)] // [WangBaldacci2025]
    [InlineData("cgcut3", 1860)] // [WangBaldacci2025]
    public void Limited_copies(string name, long optimum) => Check(Problem(name, isLimited: true, mayTurn: false), optimum);

    private static void Check(BoardProblem problem, long optimum)
    {
        var layout = BoardSolver.Solve(problem, new BoardLimits(), TestContext.Current.CancellationToken);

        Assert.Equal((optimum, optimum), (layout.Value, layout.Bound));
        CutTrees.Check(problem, layout);
    }

    private static BoardProblem Problem(string name, bool isLimited, bool mayTurn)
    {
        var (length, width, parts) = Instances[name];
        return new BoardProblem(
            Length.FromMillimetres(length), Length.FromMillimetres(width),
            [.. parts.Select(p => new BoardPart(Length.FromMillimetres(p[0]), Length.FromMillimetres(p[1]), p[3], isLimited ? p[2] : null, mayTurn))],
            Length.Zero);
    }
}
