using Google.OrTools.Sat;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <content>Strips fill the width of their glue-up with the asked chance.</content>
internal sealed partial class PlanModel
{
    /// <summary>Net widths add up to the blanks' width with trim and the asked chance in hand, and not beyond clamps and machines.</summary>
    private void StripsFillTheWidth(PanelCandidate panel)
    {
        var strips = byPanel[panel.Index];
        var counts = strips.Select(s => s.Count).ToArray();
        var shared = TiesOf(strips);
        model.Add(LinearExpr.WeightedSum([.. counts, .. shared.Select(t => t.Ties)], [.. strips.Select(s => s.Counts), .. shared.Select(t => -t.InHand)])
            >= Grid.Hundredths.Up(panel.WidthBase) * Panel(panel));
        model.Add(LinearExpr.WeightedSum(counts, strips.Select(s => s.Width + 1).ToArray())
            <= Grid.Hundredths.Down(panel.WidestRough) * Panel(panel));
    }

    /// <summary>
    /// Strips whose edges were worked in one pass err together: m of them count m² times, so m² − m more than as many that err each for itself.
    /// That is bent upwards, so straight lines from below meet it at every whole m.
    /// </summary>
    private List<(IntVar Ties, long InHand)> TiesOf(List<SegmentVariable> strips)
    {
        var shared = new List<(IntVar, long)>();
        foreach (var group in strips.Where(s => s.Option.EdgePass >= 0).GroupBy(s => s.Option.EdgePass))
        {
            var alike = group.ToList();
            var most = (int)Math.Min(MostStrips, alike.Sum(s => s.Most));
            if (most < 2)
            {
                continue;
            }

            var ties = Follows(model.NewIntVar(0, most * (most - 1), ""), h => alike.Sum(s => h[s.Count]) is var m ? m * (m - 1) : 0);
            var count = LinearExpr.Sum(alike.Select(s => s.Count));
            for (var k = 1; k < most; k++)
            {
                model.Add(ties >= (count * (2 * k)) - (k * (k + 1)));
            }

            shared.Add((ties, alike.Max(s => s.Option.InHand)));
        }

        return shared;
    }
}
