using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>Gifts that need the same, and the glue-ups and runs that are the same for several of them: what makes a bound for many gifts as quick as for few.</summary>
internal sealed class GiftGroups
{
    private readonly Problem problem;
    private readonly SegmentOptions options;
    private readonly List<PanelCandidate> panelTypes = [];
    private readonly Dictionary<object, int> panelTypeOf = [];
    private readonly List<int> runTypes = [];
    private readonly Dictionary<int, int> runTypeOf = [];

    internal GiftGroups(Problem problem, SegmentOptions options)
    {
        this.problem = problem;
        this.options = options;
        Groups =
        [
            .. problem.Gifts.Select(Describe).GroupBy(d => (d.Key, d.Gift.Weight))
                .Select(g => new GiftGroup(g.Count(), g.Key.Weight, g.First().Parts, g.First().Runs)),
        ];
    }

    /// <summary>The groups.</summary>
    internal ImmutableArray<GiftGroup> Groups { get; }

    /// <summary>One glue-up for each type, standing for all alike.</summary>
    internal IReadOnlyList<PanelCandidate> PanelTypes => panelTypes;

    /// <summary>One run for each type, standing for all alike.</summary>
    internal IReadOnlyList<int> RunTypes => runTypes;

    /// <summary>Type of a glue-up.</summary>
    internal int TypeOf(int panel) => panelTypeOf[KeyOf(problem.Panels[panel])];

    private (string Key, GiftDemand Gift, ImmutableArray<GroupPart> Parts, ImmutableArray<(int Type, int Count)> Runs) Describe(GiftDemand gift)
    {
        ImmutableArray<GroupPart> parts =
        [
            .. PartWays.Of(problem, gift).Select(ways => new GroupPart([.. ways.Modes.Select(TypeOf)], ways.Ways, SharedBy(gift, ways.Part))),
        ];
        ImmutableArray<(int Type, int Count)> runs = [.. problem.Runs.Where(r => r.GiftIndex == gift.Index && r.Done is null).Select(r => (TypeOf(r), r.Runs.Length))];
        var key = string.Join(';', parts.Select(p => $"{string.Join(',', p.Types)}:{string.Join(' ', p.Ways.Select(w => string.Join(',', w)))}:{string.Join(' ', p.Shared)}")) + "|" + string.Join(';', runs);
        return (key, gift, parts, runs);
    }

    private ImmutableArray<(int Type, double Share)> SharedBy(GiftDemand gift, Part part) =>
    [
        .. problem.SharedOf[gift.Index].Where(p => p.IsFor(gift.Index, part.Key))
            .Select(p => (TypeOf(p), p.YieldFor(gift.Index, part.Key) / (double)p.Shares.Sum(s => s.Count))).Distinct().Order(),
    ];

    private int TypeOf(PanelCandidate panel)
    {
        var key = KeyOf(panel);
        if (!panelTypeOf.TryGetValue(key, out var type))
        {
            panelTypeOf[key] = type = panelTypes.Count;
            panelTypes.Add(panel);
        }

        return type;
    }

    private object KeyOf(PanelCandidate panel) =>
        (options.ListOfPanel(panel.Index), panel.Wish.MinimumStrips, panel.Wish.MaximumStrips, Rule(panel.Wish), panel.Wish.ContrastIn(problem.Shop));

    /// <summary>Patterns that keep neighbours apart in the same way are one to the relaxation.</summary>
    private static StripPattern Rule(PanelWish wish) => wish.Pattern is StripPattern.Graduated or StripPattern.Accent or StripPattern.BookMatched ? wish.Pattern : StripPattern.Contrast;

    private int TypeOf(RunDemand run)
    {
        var list = options.ListOfRuns(run.Index);
        if (!runTypeOf.TryGetValue(list, out var type))
        {
            runTypeOf[list] = type = runTypes.Count;
            runTypes.Add(run.Index);
        }

        return type;
    }
}
