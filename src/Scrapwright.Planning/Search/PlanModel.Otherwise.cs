using Google.OrTools.Sat;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <content>What shall be otherwise, when a maker asks why it is as it is.</content>
internal sealed partial class PlanModel
{
    /// <summary>A gift is made.</summary>
    internal void RequireMade(int gift) => model.Add(Made(gift) == 1);

    /// <summary>The glue-ups of a part take nothing from an offcut.</summary>
    internal void RequireWithout(int gift, string part, int offcut)
    {
        foreach (var strip in PanelsOf(gift, part).SelectMany(p => byPanel[p.Index]).Where(s => problem.Patterns[s.Segment.Pattern].OffcutIndex == offcut))
        {
            model.Add(strip.Count == 0);
        }
    }

    /// <summary>At least one gift is made.</summary>
    internal void RequireOneMade() => model.AddBoolOr(scope.Gifts.Select(Made));

    /// <summary>A gift is made, and a panel part of it or one of its runs of solid parts takes wood of an offcut. False when it could not.</summary>
    /// <param name="gift">Place of the gift.</param>
    /// <param name="part">Key of the panel part; null for a run.</param>
    /// <param name="run">Place of the run; ignored for a panel part.</param>
    /// <param name="offcut">Place of the offcut.</param>
    internal bool RequireFrom(int gift, string? part, int run, int offcut)
    {
        RequireMade(gift);
        var all = part is null ? bySolid[run] : PanelsOf(gift, part).SelectMany(p => byPanel[p.Index]);
        var counts = all.Where(s => problem.Patterns[s.Segment.Pattern].OffcutIndex == offcut).Select(s => s.Count).ToList();
        model.Add(LinearExpr.Sum(counts) >= 1);
        return counts.Count > 0;
    }

    /// <summary>At least one glue-up of a part is resawn, or none is. False when it cannot be asked for: no glue-up of the part could be.</summary>
    internal bool RequireResawn(int gift, string part, bool isResawn)
    {
        var resawn = PanelsOf(gift, part).Where(p => p.Needs.Layers > 1).Select(Panel).ToList();
        if (isResawn)
        {
            model.AddBoolOr(resawn);
        }
        else
        {
            model.Add(LinearExpr.Sum(resawn) == 0);
        }

        return !isResawn || resawn.Count > 0;
    }

    /// <summary>A part takes so many glue-ups. False when it could not.</summary>
    internal bool RequireGlueUps(int gift, string part, int least, int most)
    {
        var all = PanelsOf(gift, part).Select(Panel).ToList();
        model.AddLinearConstraint(LinearExpr.Sum(all), least, most);
        return all.Count >= least;
    }

    private IEnumerable<PanelCandidate> PanelsOf(int gift, string part) => FreePanels.Where(p => p.IsFor(gift, part));
}
