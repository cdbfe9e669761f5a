using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Planning.Building;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>
/// The placement a search begins with. Where there was a plan before, what of it still holds: every glue-up with its strips, a strip that no longer does replaced by the
/// cheapest that fits; gifts that find no way so are placed anew with the wood that is left.
/// </summary>
internal sealed class FormerPlacement
{
    private readonly Problem problem;
    private readonly SegmentOptions options;
    private readonly Plan former;
    private readonly Dictionary<string, MilledOffcut> milled = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Core.Pile.Offcut> formerOffcuts;

    private FormerPlacement(Problem problem, SegmentOptions options, Plan former)
    {
        (this.problem, this.options, this.former) = (problem, options, former);
        formerOffcuts = former.Stock().ToDictionary(o => o.Label, StringComparer.Ordinal);
    }

    /// <summary>The better of a placement from nothing and the one before as far as it holds.</summary>
    internal static Placement Start(Problem problem, SegmentOptions options)
    {
        if (problem.Former is not { } former)
        {
            return FirstPlacement.Find(problem, options);
        }

        var kept = FirstPlacement.Complete(problem, options, new FormerPlacement(problem, options, former).Find());
        if (kept.Made.All(made => made))
        {
            return kept;
        }

        var anew = FirstPlacement.Find(problem, options);
        return NeighbourhoodSearch.IsBetter(anew, kept) ? anew : kept;
    }

    /// <summary>Just the plan before, as far as it holds.</summary>
    /// <exception cref="InvalidOperationException">There was none.</exception>
    internal static Placement AsItWas(Problem problem, SegmentOptions options) =>
        new FormerPlacement(problem, options, problem.Former ?? throw new InvalidOperationException("There was no plan before.")).Find();

    private Placement Find()
    {
        var pile = new OpenPile(problem);
        bool[] made = new bool[problem.Gifts.Length];
        List<int> panels = [.. problem.DonePanels];
        List<Segment> segments = [.. problem.DoneSegments];
        var lacking = new List<(List<GiftDemand> Gifts, Draft Draft)>();
        foreach (var gifts in SharingGifts())
        {
            var trial = pile.Copy();
            if (Read(gifts, trial) is not { } draft)
            {
                continue;
            }

            if (draft.Lacks.Count > 0)
            {
                lacking.Add((gifts, draft));
                pile = trial;
                continue;
            }

            if (gifts.All(g => IsWhole(g, draft)))
            {
                pile = trial;
                Keep(gifts, draft);
            }
        }

        // Whole gifts first: what lacks a strip must not take theirs.
        foreach (var (gifts, draft) in lacking)
        {
            if (draft.Lacks.All(lack => Replace(lack, draft, pile)) && gifts.All(g => IsWhole(g, draft)))
            {
                Keep(gifts, draft);
            }
        }

        var placement = new Placement([.. made], [.. panels.Order()], [.. segments], []);
        return placement with { Values = PlacementValues.Of(problem, placement) };

        void Keep(List<GiftDemand> gifts, Draft draft)
        {
            gifts.ForEach(g => made[g.Index] = true);
            panels.AddRange(draft.Panels);
            segments.AddRange(draft.Segments);
        }
    }

    /// <summary>The gifts that were made and still are wished for; those that shared glue-ups stand together.</summary>
    private IEnumerable<List<GiftDemand>> SharingGifts()
    {
        var open = problem.Gifts.Where(g => former.Made.Any(m => m.Gift == g.Gift.Label)).ToList();
        while (open.Count > 0)
        {
            var together = new List<GiftDemand> { open[0] };
            open.RemoveAt(0);
            for (var i = 0; i < together.Count; i++)
            {
                var sharing = OpenGlueUps().Where(g => g.IsFor(together[i].Gift.Label)).SelectMany(g => g.ForGifts()).ToHashSet(StringComparer.Ordinal);
                together.AddRange(open.Where(g => sharing.Contains(g.Gift.Label)));
                open.RemoveAll(together.Contains);
            }

            yield return together;
        }
    }

    private IEnumerable<GlueUp> OpenGlueUps() => former.GlueUps.Where(g => problem.Done.Glued.All(d => d.Id != g.Id));

    private bool IsLike(PanelCandidate panel, GlueUp glueUp) =>
        panel.Done is null && panel.Needs.Blanks == glueUp.Blanks && panel.Needs.Layers == glueUp.Layers
        && panel.Shares.Select(s => (problem.Gifts[s.GiftIndex].Gift.Label, s.Part.Key)).SequenceEqual(glueUp.Also.Select(a => (a.Gift, a.Part)).Prepend((glueUp.Gift, glueUp.Part)));

    /// <summary>The gifts' strips as they were, and those that are missing; null when their glue-ups are of other kinds now.</summary>
    private Draft? Read(List<GiftDemand> gifts, OpenPile pile)
    {
        var draft = new Draft();
        foreach (var glueUp in OpenGlueUps().Where(g => gifts.Any(gift => g.IsFor(gift.Gift.Label))))
        {
            if (problem.Panels.FirstOrDefault(p => IsLike(p, glueUp) && !draft.Panels.Contains(p.Index)) is not { } panel)
            {
                return null;
            }

            draft.Panels.Add(panel.Index);
            foreach (var strip in glueUp.Strips)
            {
                Add(options.ForPanel(panel.Index), strip.Offcut, strip.Piece, strip.RoughWidth, panel.Index, -1);
            }
        }

        foreach (var demand in problem.Runs.Where(r => gifts.Any(g => g.Index == r.GiftIndex) && r.Done is null))
        {
            foreach (var run in demand.Runs)
            {
                if (former.Boards.FirstOrDefault(b => b.Gift == problem.Gifts[demand.GiftIndex].Gift.Label && b.Run == run.Mark) is { } board)
                {
                    Add(options.ForSolid(demand.Index), board.Offcut, board.Piece, board.RoughWidth, -1, demand.Index);
                }
                else
                {
                    return null;
                }
            }
        }

        return draft;

        void Add(ImmutableArray<SegmentOption> all, string offcut, string piece, Length roughWidth, int panel, int solid)
        {
            var candidates = all.Where(o => problem.Patterns[o.Segment.Pattern].Offcut.Label == offcut && pile.HasRoom(o) && IsAsBefore(o, offcut, piece, roughWidth));
            if (candidates.FirstOrDefault() is { } option)
            {
                pile.Take(option);
                draft.Segments.Add(option.Segment with { Panel = panel, Solid = solid });
            }
            else
            {
                draft.Lacks.Add((panel, solid));
            }
        }
    }

    /// <summary>Cut in the same way, from the same lane; its width may be another when the offcut was measured anew.</summary>
    private bool IsAsBefore(SegmentOption option, string offcut, string piece, Length roughWidth)
    {
        if (!milled.TryGetValue(offcut, out var way))
        {
            if (!formerOffcuts.TryGetValue(offcut, out var before))
            {
                return false;
            }

            milled[offcut] = way = MilledOffcut.Of(former, before);
        }

        var pattern = problem.Patterns[option.Segment.Pattern];
        var route = way.Way switch { MilledWay.RippedFirst => Route.RipFirst, MilledWay.CrosscutFirst => Route.CrosscutFirst, _ => Route.MillWhole };
        var lane = way.Lanes.Index().FirstOrDefault(l => l.Item.Pieces.Any(p => p.Piece == piece), (Index: -1, Item: null!)).Index;
        return pattern.Route == route && pattern.Layers == way.Layers && pattern.Lanes.Length == way.Lanes.Length && option.Segment.Lane == lane
            && pattern.Lanes.Index().All(l => l.Item.RoughWidth == way.Lanes[l.Index].RoughWidth || l.Index >= pattern.Lanes.Length - pattern.Layers);
    }

    private bool Replace((int Panel, int Solid) lack, Draft draft, OpenPile pile)
    {
        var all = lack.Panel >= 0 ? options.ForPanel(lack.Panel) : options.ForSolid(lack.Solid);
        foreach (var option in all.Where(pile.HasRoom).OrderBy(o => o.Wood))
        {
            var segment = option.Segment with { Panel = lack.Panel, Solid = lack.Solid };

            // The last strip that lacks must make the glue-up whole; those before it only must not be too wide.
            draft.Segments.Add(segment);
            var isLast = draft.Lacks.Count(l => l.Panel == lack.Panel) == draft.Replaced.GetValueOrDefault(lack.Panel) + 1;
            if (lack.Panel < 0 || (isLast ? IsFilled(lack.Panel, draft) : IsNotTooWide(lack.Panel, draft)))
            {
                draft.Replaced[lack.Panel] = draft.Replaced.GetValueOrDefault(lack.Panel) + 1;
                pile.Take(option);
                return true;
            }

            draft.Segments.RemoveAt(draft.Segments.Count - 1);
        }

        return false;
    }

    private bool IsWhole(GiftDemand gift, Draft draft) =>
        gift.Product.Parts.Where(p => p.Kind == Core.Designs.PartKind.Panel && problem.StillNeeded(gift, p) > 0)
            .All(part => IsJustEnough(
                [.. draft.Panels.Select(p => problem.Panels[p]).Where(p => p.IsFor(gift.Index, part.Key)).Select(p => p.YieldFor(gift.Index, part.Key))], problem.StillNeeded(gift, part)))
        && draft.Panels.All(p => IsFilled(p, draft)) && problem.KeepsPins(gift.Index, draft.Segments);

    private static bool IsJustEnough(List<int> yields, int needed)
    {
        var yield = yields.Sum();
        return yield >= needed && yields.All(y => yield - y < needed);
    }

    private bool IsNotTooWide(int panel, Draft draft) => Options(panel, draft).Sum(o => o.Width + 1) <= Grid.Hundredths.Down(problem.Panels[panel].WidestRough);

    private bool IsFilled(int panel, Draft draft)
    {
        var candidate = problem.Panels[panel];
        var strips = Options(panel, draft);
        return strips.Count >= candidate.Wish.MinimumStrips && strips.Count <= Math.Min(candidate.Wish.MaximumStrips, PlanModel.MostStrips)
            && strips.Sum(s => s.Filling) >= Grid.Hundredths.Up(candidate.Needs.WidthBase)
            && IsNotTooWide(panel, draft)
            && new PanelStrips(problem, candidate, [.. draft.Segments.Where(s => s.Panel == panel)]).FindBest() is not null
            && strips.CountBy(s => s.Place).All(s => s.Value <= strips.First(o => o.Place == s.Key).Most);
    }

    private List<SegmentOption> Options(int panel, Draft draft) =>
        [.. draft.Segments.Where(s => s.Panel == panel).Select(s => options.ForPanel(panel).First(o => o.Place == problem.PlaceOf(s)))];

    private sealed class Draft
    {
        internal List<int> Panels { get; } = [];

        internal List<Segment> Segments { get; } = [];

        internal List<(int Panel, int Solid)> Lacks { get; } = [];

        internal Dictionary<int, int> Replaced { get; } = [];
    }
}
