using Scrapwright.Core.Milling;
using Scrapwright.Core.Plans.Audit;

namespace Scrapwright.Core.Tests.Milling;

public sealed class SizeChanceTests
{
    // Panels whose strips come from few passes, some of them layers of one strip, worked out in two ways that share no code but the normal share.
    [Theory]
    [InlineData(1, 0.0002)]
    [InlineData(2, 0.001)]
    [InlineData(3, 0.004)]
    public void Fixed_points_and_nested_quadrature_agree_on_panels_that_share_passes(int panels, double tolerance)
    {
        var random = new Random(panels);
        double worst = 0;
        for (var trial = 0; trial < 40 / panels; trial++)
        {
            var (thick, wide, cases) = Panels(panels, random);
            var ours = ThicknessOdds.Of(thick) * WidthOdds.Of(wide);
            var audits = CaseShares.Of(cases, 1);
            if (audits > 0.5)
            {
                worst = Math.Max(worst, Math.Abs(ours - audits));
            }
        }

        Assert.InRange(worst, 0, tolerance);
    }

    private static (List<ThicknessOdds.Demand> Thick, List<WidthOdds.Demand> Wide, SizeCase[] Cases) Panels(int panels, Random random)
    {
        double flatten = random.Next(5) == 0 ? 0 : 0.4, trim = random.Next(5) == 0 ? 0 : 0.8;
        double[] faces = [.. Enumerable.Range(0, 4).Select(_ => random.Next(4) == 0 ? 0 : 0.1 + (random.NextDouble() * 0.3))];
        double[] edges = [.. faces.Select(_ => 0.1 + (random.NextDouble() * 0.5))];
        bool[] resawn = [.. faces.Select(_ => random.Next(3) == 0)];
        const double Clean = 0.2;
        var thick = new List<ThicknessOdds.Demand>();
        var wide = new List<WidthOdds.Demand>();
        var cases = new List<SizeCase>();
        for (var p = 0; p < panels; p++)
        {
            var layers = p == 0 ? 1 + random.Next(3) : 1;
            var strips = Enumerable.Range(0, 4).Select(_ => (Pass: random.Next(4), Layer: 1 + random.Next(2), Room: 0.8 + (random.NextDouble() * 2))).ToArray();
            var width = 1.5 + (random.NextDouble() * 3);
            thick.Add(new(flatten, layers > 1 ? 0.15 : 0, layers, [.. strips.Select(s => resawn[s.Pass]
                ? new ThicknessOdds.Room($"{s.Pass}/{s.Layer}", Clean, s.Room) { Stem = $"{s.Pass}", StemMm = faces[s.Pass] }
                : new ThicknessOdds.Room($"{s.Pass}", faces[s.Pass], s.Room))]));
            wide.Add(new(width, trim, layers, [.. strips.Select(s => ($"{s.Pass}", edges[s.Pass]))]));
            cases.Add(new SizeCase
            {
                Times = layers,
                LengthRoomMm = 100,
                WidthRoomMm = width,
                TrimMm = trim,
                FlattenMm = flatten,
                CleanUpMm = layers > 1 ? 0.15 * layers : 0,
                Strips = [.. strips.Select(s => new SizeCase.StripCase(
                    s.Room, faces[s.Pass] > 0 ? [(s.Pass, faces[s.Pass])] : [], resawn[s.Pass] ? (100 + (10 * s.Pass) + s.Layer, Clean) : default, [(s.Pass, edges[s.Pass])]))],
            });
        }

        return (thick, wide, [.. cases]);
    }
}
