using Scrapwright.Core.Plans;
using Scrapwright.Planning.Problems;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Building;

/// <summary>What each glue-up of a placement is called: what is glued bears its name already, one like a glue-up of the plan before keeps that name, the rest are numbered.</summary>
internal sealed class GlueUpNames
{
    private readonly Dictionary<int, string> ids = [];
    private readonly Dictionary<int, GlueUp> former = [];

    private GlueUpNames(Problem problem, Placement placement)
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        foreach (var index in placement.Panels)
        {
            if (problem.Panels[index].Done is { } done)
            {
                ids[index] = done.Id;
                taken.Add(done.Id);
            }
        }

        foreach (var (index, glueUp) in Partners(problem, placement))
        {
            if (taken.Add(glueUp.Id))
            {
                ids[index] = glueUp.Id;
                former[index] = glueUp;
            }
        }

        var prefix = problem.Offcuts.Any(o => o.Label.StartsWith('G') && o.Label.Skip(1).Any(char.IsAsciiDigit)) ? "Panel" : "G";
        var number = 0;
        foreach (var index in placement.Panels.Where(p => !ids.ContainsKey(p)))
        {
            do
            {
                number++;
            }
            while (!taken.Add($"{prefix}{number}"));
            ids[index] = $"{prefix}{number}";
        }
    }

    internal static GlueUpNames Of(Problem problem, Placement placement) => new(problem, placement);

    internal string Id(int panel) => ids[panel];

    /// <summary>The glue-up of the plan before whose place it takes; null when there is none.</summary>
    internal GlueUp? Former(int panel) => former.GetValueOrDefault(panel);

    /// <summary>Glue-ups of one part, those with most strips in common first.</summary>
    private static List<(int Panel, GlueUp Former)> Partners(Problem problem, Placement placement)
    {
        var pairs = new List<(int Panel, GlueUp Former, int Place, int Shared)>();
        foreach (var index in problem.Former is null ? [] : placement.Panels.Where(p => problem.Panels[p].Done is null))
        {
            var panel = problem.Panels[index];
            var gift = problem.Gifts[panel.GiftIndex].Gift.Label;
            foreach (var (place, glueUp) in problem.Former!.GlueUps.Index().Where(g => g.Item.Gift == gift && g.Item.Part == panel.Part.Key))
            {
                var open = glueUp.Strips.Select(s => (s.Offcut, s.RoughWidth)).ToList();
                pairs.Add((index, glueUp, place, placement.Segments.Where(s => s.Panel == index).Select(s => StripsAsBefore.KeyOf(problem, s)).Count(k => open.Remove((k.Offcut, k.RoughWidth)))));
            }
        }

        var partners = new List<(int, GlueUp)>();
        var used = (Panels: new HashSet<int>(), Places: new HashSet<int>());
        foreach (var pair in pairs.OrderByDescending(p => p.Shared).ThenBy(p => p.Panel).ThenBy(p => p.Place))
        {
            if (!used.Panels.Contains(pair.Panel) && used.Places.Add(pair.Place))
            {
                used.Panels.Add(pair.Panel);
                partners.Add((pair.Panel, pair.Former));
            }
        }

        return partners;
    }
}
