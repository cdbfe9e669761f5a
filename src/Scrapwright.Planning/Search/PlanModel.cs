using System.Collections.Immutable;
using Google.OrTools.Sat;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>The constraint model of a problem: every rule is one method named after it.</summary>
internal sealed partial class PlanModel
{
    internal const int MostStrips = 12;

    private readonly Problem problem;
    private readonly Scope scope;
    private readonly CpModel model = new();
    private readonly HintValues hints = new();

    // By place in the problem; null outside the scope.
    private readonly BoolVar?[] made;
    private readonly BoolVar?[] panels;
    private readonly BoolVar?[] patterns;
    private readonly List<SegmentVariable> segments = [];
    private readonly List<(IntVar Variable, Func<HintValues, long> Value)> followers = [];
    private readonly List<SegmentVariable>[] byPanel;
    private readonly List<SegmentVariable>[] bySolid;
    private readonly List<SpeciesCount>[] panelSpecies;
    private readonly List<SpeciesCount>[] solidSpecies;
    private readonly Dictionary<LevelKind, List<(IntVar Variable, long Worth)>> levels = [];

    internal PlanModel(Problem problem, SegmentOptions options, Scope scope)
    {
        this.problem = problem;
        this.scope = scope;
        made = new BoolVar?[problem.Gifts.Length];
        panels = new BoolVar?[problem.Panels.Length];
        patterns = new BoolVar?[problem.Patterns.Length];
        byPanel = [.. problem.Panels.Select(_ => new List<SegmentVariable>())];
        bySolid = [.. problem.Runs.Select(_ => new List<SegmentVariable>())];
        AddGifts();
        AddSegments(options);
        panelSpecies = [.. byPanel.Select(CountSpecies)];
        solidSpecies = [.. bySolid.Select(CountSpecies)];
        OnePatternPerOffcut();
        SegmentsFitTheirRun();
        foreach (var panel in FreePanels)
        {
            StripsFillTheWidth(panel);
            StripsAreFewEnough(panel);
            AlikeStripsStayApart(panel);
        }

        PanelsServeTheirGift();
        EveryRunHasABoard();
        PinsAreKept();
        levels[LevelKind.GiftsMade] = [.. scope.Gifts.Select(g => (Made(g), problem.Gifts[g].Weight))];
        levels[LevelKind.Looks] = LooksLevel();
        levels[LevelKind.WoodUsed] = [.. segments.Select(s => (s.Count, s.Wood))];
        levels[LevelKind.ClampLoads] = [.. FreePanels.Select(p => (Panel(p), 1L)), .. BoardsToGlue().Select(p => (p, 1L))];
        levels[LevelKind.StripsAsBefore] = [.. StripsKept().Select(v => (v, 1L))];
    }

    internal CpModel Model => model;

    internal int SegmentCount => segments.Count;

    private IEnumerable<PanelCandidate> FreePanels => problem.Panels.Where(p => panels[p.Index] is not null);

    private IEnumerable<GiftDemand> FreeGifts => scope.Gifts.Select(g => problem.Gifts[g]);

    internal static bool IsMaximised(LevelKind kind) => kind is LevelKind.GiftsMade or LevelKind.Looks or LevelKind.StripsAsBefore;

    /// <summary>Makes a level the objective.</summary>
    internal void Aim(LevelKind kind)
    {
        if (IsMaximised(kind))
        {
            model.Maximize(Sum(kind));
        }
        else
        {
            model.Minimize(Sum(kind));
        }
    }

    /// <summary>
    /// Holds the levels before one at what the suggested placement reaches and makes that one the objective; when that is looks, with at most a quarter more
    /// wood than now, so that a point is not paid for with half the pile.
    /// </summary>
    internal void AimFrom(LevelKind kind)
    {
        foreach (var level in problem.Levels.TakeWhile(l => l != kind))
        {
            Hold(level, SuggestedValue(level));
        }

        if (kind == LevelKind.Looks)
        {
            Hold(LevelKind.WoodUsed, SuggestedValue(LevelKind.WoodUsed) * 5 / 4);
        }

        Aim(kind);
    }

    /// <summary>What the suggested placement reaches on a level within the scope.</summary>
    internal long SuggestedValue(LevelKind kind) => DoneValue(kind) + levels[kind].Sum(t => t.Worth * hints[t.Variable]);

    /// <summary>From now on a level may not get worse than the value reached within the scope.</summary>
    internal void Hold(LevelKind kind, long value)
    {
        if (IsMaximised(kind))
        {
            model.Add(Sum(kind) >= value);
        }
        else
        {
            model.Add(Sum(kind) <= value);
        }
    }

    /// <summary>Forbids one set of strips for a glue-up (its order could not be found).</summary>
    internal void Forbid(int panel, IEnumerable<Segment> strips)
    {
        var counts = strips.GroupBy(s => s).ToDictionary(g => g.Key, g => g.Count());
        var atLeast = new List<ILiteral>();
        foreach (var variable in byPanel[panel].Where(v => counts.ContainsKey(v.Segment)))
        {
            var enough = Follows(model.NewBoolVar(""), h => h[variable.Count] >= counts[variable.Segment] ? 1 : 0);
            model.Add(variable.Count >= counts[variable.Segment]).OnlyEnforceIf(enough);
            model.Add(variable.Count < counts[variable.Segment]).OnlyEnforceIf(enough.Not());
            atLeast.Add(enough.Not());
        }

        model.AddBoolOr(atLeast);
    }

    /// <summary>Starts the next search from a placement. Every variable gets a value, so that the solver has a complete solution at once.</summary>
    internal void Suggest(Placement placement)
    {
        var chosen = placement.Segments.Select(s => s.Pattern).ToHashSet();
        var counts = placement.Segments.CountBy(s => s).ToDictionary();
        model.ClearHints();
        HintAll(made, i => placement.Made[i]);
        HintAll(panels, placement.Panels.Contains);
        HintAll(patterns, chosen.Contains);
        foreach (var segment in segments)
        {
            Hint(segment.Count, counts.GetValueOrDefault(segment.Segment));
        }

        foreach (var (variable, value) in followers)
        {
            Hint(variable, value(hints));
        }

        void HintAll(BoolVar?[] variables, Func<int, bool> value)
        {
            for (var i = 0; i < variables.Length; i++)
            {
                if (variables[i] is { } variable)
                {
                    Hint(variable, value(i) ? 1 : 0);
                }
            }
        }

        void Hint(IntVar variable, long value)
        {
            hints[variable] = value;
            model.AddHint(variable, value);
        }
    }

    /// <summary>Notes a variable whose value follows from variables noted or made before it.</summary>
    private T Follows<T>(T variable, Func<HintValues, long> value)
        where T : IntVar
    {
        followers.Add((variable, value));
        return variable;
    }

    /// <summary>Reads what a solution decided. Levels are worked out anew: a point for looks need not be claimed by a solution that aims at something else.</summary>
    internal Placement Read(CpSolver solver)
    {
        var used = ImmutableArray.CreateBuilder<Segment>();
        foreach (var segment in segments)
        {
            for (var i = solver.Value(segment.Count); i > 0; i--)
            {
                used.Add(segment.Segment);
            }
        }

        return scope.Whole(WithValues(new Placement(
            [.. made.Select((v, i) => v is not null && scope.Gifts.Contains(i) && solver.BooleanValue(v))],
            [.. FreePanels.Where(p => solver.BooleanValue(Panel(p))).Select(p => p.Index)],
            used.ToImmutable(),
            [])));

        Placement WithValues(Placement placement) => scope.Rest is null ? placement with { Values = PlacementValues.Of(problem, placement) } : placement;
    }

    private LinearExpr Sum(LevelKind kind) =>
        LinearExpr.WeightedSum(levels[kind].Select(t => t.Variable).ToArray(), levels[kind].Select(t => t.Worth).ToArray()) + DoneValue(kind);

    private BoolVar Made(int gift) => made[gift] ?? throw new InvalidOperationException($"Gift {gift} is outside the scope.");

    private BoolVar Panel(PanelCandidate panel) => panels[panel.Index] ?? throw new InvalidOperationException($"Glue-up {panel.Index} is outside the scope.");

    private BoolVar Pattern(int index)
    {
        if (patterns[index] is { } known)
        {
            return known;
        }

        var pattern = patterns[index] = model.NewBoolVar($"pattern {index}");
        if (scope.IsSettled(index))
        {
            model.Add(pattern == 1);
        }

        return pattern;
    }

    private BoolVar Constant(bool value)
    {
        var constant = Follows(model.NewBoolVar(""), _ => value ? 1 : 0);
        model.Add(constant == (value ? 1 : 0));
        return constant;
    }

    private void AddGifts()
    {
        foreach (var gift in scope.Gifts)
        {
            made[gift] = model.NewBoolVar($"made {gift}");
        }

        foreach (var panel in problem.Panels.Where(p => p.Done is null && p.Shares.All(s => made[s.GiftIndex] is not null)))
        {
            panels[panel.Index] = model.NewBoolVar($"panel {panel.Index}");
        }
    }

    private void AddSegments(SegmentOptions options)
    {
        foreach (var panel in FreePanels)
        {
            Add(byPanel[panel.Index], options.ForPanel(panel.Index), s => s with { Panel = panel.Index });
        }

        foreach (var run in problem.Runs.Where(r => made[r.GiftIndex] is not null && r.Done is null))
        {
            Add(bySolid[run.Index], options.ForSolid(run.Index), s => s with { Solid = run.Index });
        }

        void Add(List<SegmentVariable> list, ImmutableArray<SegmentOption> all, Func<Segment, Segment> naming)
        {
            list.AddRange(all.Where(scope.Allows).Select(o => new SegmentVariable(naming(o.Segment), o, model.NewIntVar(0, o.Most, ""))));
            segments.AddRange(list);
            foreach (var segment in list)
            {
                Pattern(segment.Segment.Pattern);
            }
        }
    }

    /// <summary>The ways to use boards that are glued face to face first, without those that the rest has glued anyhow.</summary>
    private IEnumerable<BoolVar> BoardsToGlue() =>
        patterns.Where((variable, i) => variable is not null && problem.Patterns[i].Facing is not null && !scope.IsSettled(i)).Select(v => v!);

    private List<SpeciesCount> CountSpecies(List<SegmentVariable> variables)
    {
        var counts = new List<SpeciesCount>();
        foreach (var group in variables.GroupBy(v => v.Species).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            var most = Math.Min(MostStrips, group.Sum(v => v.Most));
            var count = Follows(model.NewIntVar(0, most, ""), h => group.Sum(v => h[v.Count]));
            var present = Follows(model.NewBoolVar(""), h => h[count] > 0 ? 1 : 0);
            model.Add(LinearExpr.Sum(group.Select(v => v.Count)) == count);
            model.Add(count <= most * present);
            model.Add(count >= present);
            counts.Add(new SpeciesCount(group.Key, count, present));
        }

        return counts;
    }

    /// <summary>An offcut is milled and ripped in at most one way, or glued into at most one board.</summary>
    private void OnePatternPerOffcut()
    {
        foreach (var group in problem.Patterns.SelectMany((p, i) => p.Takes.Select(offcut => (Offcut: offcut, Variable: patterns[i]))).Where(x => x.Variable is not null).GroupBy(x => x.Offcut))
        {
            model.AddAtMostOne(group.Select(x => x.Variable!));
        }
    }

    /// <summary>Segments and the kerfs between them fit into their clear stretch.</summary>
    private void SegmentsFitTheirRun()
    {
        foreach (var group in segments.GroupBy(s => s.Option.Place))
        {
            var list = group.ToList();
            model.Add(LinearExpr.WeightedSum(list.Select(s => s.Count).ToArray(), list.Select(s => s.Option.Marks).ToArray())
                <= scope.RoomAt(group.Key) * Pattern(list[0].Segment.Pattern));
        }
    }

    /// <summary>Net widths add up to the blanks' width with trim and the asked chance in hand, and not beyond clamps and machines.</summary>
    private void StripsFillTheWidth(PanelCandidate panel)
    {
        var strips = byPanel[panel.Index];
        var counts = strips.Select(s => s.Count).ToArray();
        model.Add(LinearExpr.WeightedSum(counts, strips.Select(s => s.Option.Filling).ToArray())
            >= Grid.Hundredths.Up(panel.Needs.WidthBase) * Panel(panel));
        model.Add(LinearExpr.WeightedSum(counts, strips.Select(s => s.Width + 1).ToArray())
            <= Grid.Hundredths.Down(panel.WidestRough) * Panel(panel));
    }

    /// <summary>As many strips as the design wishes, none when the glue-up is not made.</summary>
    private void StripsAreFewEnough(PanelCandidate panel)
    {
        var count = LinearExpr.Sum(panelSpecies[panel.Index].Select(s => s.Count));
        model.Add(count >= panel.Wish.MinimumStrips * Panel(panel));
        model.Add(count <= panel.Wish.MaximumStrips * Panel(panel));
    }

    /// <summary>The glue-ups of a part give at least as many blanks as the gift needs, and none is made that could be left out.</summary>
    private void PanelsServeTheirGift()
    {
        foreach (var gift in FreeGifts)
        {
            foreach (var part in gift.Product.Parts.Where(p => p.Kind == PartKind.Panel))
            {
                var candidates = FreePanels.Where(p => p.IsFor(gift.Index, part.Key)).ToList();
                var needed = problem.StillNeeded(gift, part);
                var yield = LinearExpr.WeightedSum(
                    candidates.Select(Panel).ToArray(), candidates.Select(c => (long)c.YieldFor(gift.Index, part.Key)).ToArray());
                model.Add(yield >= needed * Made(gift.Index));
                foreach (var candidate in candidates)
                {
                    model.AddImplication(Panel(candidate), Made(gift.Index));
                    model.Add(yield <= (candidate.IsShared ? needed : needed - 1 + candidate.Yield)).OnlyEnforceIf(Panel(candidate));
                    if (candidate.Slot > 0)
                    {
                        model.AddImplication(Panel(candidate), Panel(problem.Panels[candidate.Index - 1]));
                    }
                }
            }
        }
    }

    /// <summary>Each run of solid parts of a gift that is made comes from a strip of its own. A lane much wider than the parts is not used: it is ripped first.</summary>
    private void EveryRunHasABoard()
    {
        foreach (var run in problem.Runs.Where(r => scope.Gifts.Contains(r.GiftIndex) && r.Done is null))
        {
            model.Add(LinearExpr.Sum(bySolid[run.Index].Select(s => s.Count)) == run.Runs.Length * Made(run.GiftIndex));
        }
    }
}
