using System.Globalization;
using Scrapwright.Core.Measures;
using Scrapwright.Planning.Cutting;

namespace Scrapwright.Planning.Tests.Cutting;

/// <summary>Published instances of one-dimensional cutting with known optima: sizes from [EsicupDatasets], optima from [BppLibBounds].</summary>
public sealed class BarSolverReferenceTests
{
    // Optimum, room of a bar, sizes.
    public static TheoryData<string, int, int, string> Instances => new()
    {
        {
            "Falkenauer_t60_00", 20, 1000,
            """
            495 474 473 472 466 450 445 444 439 430 419 414 410 395 372 370 366 366 366 363 361 357 355 351 350 350 347 320 315 307 303 299 298 298 292 288 287 283 275 275 274 273 273 272 272
            271 269 269 268 263 262 261 259 258 255 254 252 252 252 251
            """
        },
        {
            "Falkenauer_u120_00", 48, 150,
            """
            98 98 98 96 96 94 93 93 92 91 91 90 87 86 85 85 84 84 84 84 84 83 83 82 82 81 80 80 80 79 79 78 78 78 78 76 74 74 73 73 73 73 72 71 70 70 70 69 69 69 67 66 64 62 62 60 60 59 58 58
            58 57 57 57 57 55 55 55 50 49 49 49 47 46 46 45 45 44 44 43 43 43 43 42 42 42 42 42 41 41 41 39 39 38 38 38 37 36 36 36 35 33 33 33 32 32 30 30 30 29 28 27 27 26 25 25 24 23 23 20
            """
        },
        {
            "N1C1W1_A", 25, 100,
            """
            99 99 96 96 92 92 91 88 87 86 85 76 74 72 69 67 67 62 61 56 52 51 49 46 44 42 40 40 33 33 30 30 29 28 28 27 25 24 23 22 21 20 17 14 13 11 10 7 7 3
            """
        },
        {
            "Schwerin1_BPP3", 18, 1000,
            """
            200 199 199 197 197 196 196 193 193 193 192 192 191 191 190 190 189 189 189 188 187 185 185 185 183 183 182 181 181 181 180 180 180 179 179 179 178 177 177 177 177 177 176 176 175
            175 175 175 175 174 174 174 174 173 171 171 171 170 169 169 168 168 168 168 168 167 166 166 166 166 165 165 163 162 162 161 161 160 160 160 159 159 158 158 157 156 156 156 155 155
            155 154 153 153 152 152 152 151 151 150
            """
        },
    };

    [Theory]
    [MemberData(nameof(Instances))]
    public void The_published_optimum_is_reached_and_proven(string name, int optimum, int room, string sizes)
    {
        var pieces = sizes.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries).Select(t => int.Parse(t, CultureInfo.InvariantCulture)).ToArray();
        var problem = new BarProblem(
            [.. pieces.GroupBy(p => p).Select(g => new BarItem(Length.FromMillimetres(g.Key), g.Count()))], [new BarStock(Length.FromMillimetres(room), 1)], Length.Zero);

        var cut = Assert.IsType<BarOutcome.Cut>(BarSolver.Solve(problem, new BarLimits(), TestContext.Current.CancellationToken));

        Assert.True(cut.Cost == optimum, $"{name}: {cut.Cost}");
        Assert.True(cut.IsProven);
        CutBars.Check(problem, cut);
    }
}
