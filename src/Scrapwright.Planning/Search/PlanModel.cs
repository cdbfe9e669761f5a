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
    private const int MostStrips = 12;

    private readonly Problem problem;
    private readonly CpModel model = new();
    private readonly BoolVar[] made;
    private readonly BoolVar[] panels;
    private readonly BoolVar[] patterns;
    private readonly List<SegmentVariable> segments = [];
    private readonly List<(IntVar Variable, Func<HintValues, long> Value)> followers = [];
    private readonly List<SegmentVariable>[] byPanel;
    private readonly List<SegmentVariable>[] bySolid;
    private readonly List<SpeciesCount>[] panelSpecies;
    private readonly List<SpeciesCount>[] solidSpecies;
    private readonly Dictionary<LevelKind, LinearExpr> levels = [];

    internal PlanModel(Problem problem, SegmentOptions options)
    {
        this.problem = problem;
        made = [.. problem.Gifts.Select(g => model.NewBoolVar($"made {g.Index}"))];
        panels = [.. problem.Panels.Select(p => model.NewBoolVar($"panel {p.Index}"))];
        patterns = [.. problem.Patterns.Select((_, i) => model.NewBoolVar($"pattern {i}"))];
        byPanel = [.. problem.Panels.Select(_ => new List<SegmentVariable>())];
        bySolid = [.. problem.Runs.Select(_ => new List<SegmentVariable>())];
        AddSegments(options);
        panelSpecies = [.. byPanel.Select(CountSpecies)];
        solidSpecies = [.. bySolid.Select(CountSpecies)];
        OnePatternPerOffcut();
        SegmentsFitTheirRun();
        foreach (var panel in problem.Panels)
        {
            StripsFillTheWidth(panel);
            StripsAreFewEnough(panel);
            AlikeStripsStayApart(panel);
        }

        PanelsServeTheirGift();
        EveryRunHasABoard();
        levels[LevelKind.GiftsMade] = LinearExpr.WeightedSum(made, problem.Gifts.Select(g => g.Weight).ToArray());
        levels[LevelKind.Looks] = LooksLevel();
        levels[LevelKind.WoodUsed] = LinearExpr.WeightedSum(segments.Select(s => s.Count).ToArray(), segments.Select(s => s.Wood).ToArray());
        levels[LevelKind.ClampLoads] = LinearExpr.Sum(panels);
    }

    internal CpModel Model => model;

    internal int SegmentCount => segments.Count;

    internal static ImmutableArray<LevelKind> LevelOrder { get; } =
        [LevelKind.GiftsMade, LevelKind.Looks, LevelKind.WoodUsed, LevelKind.ClampLoads];

    internal static bool IsMaximised(LevelKind kind) => kind is LevelKind.GiftsMade or LevelKind.Looks;

    /// <summary>Makes a level the objective.</summary>
    internal void Aim(LevelKind kind)
    {
        if (IsMaximised(kind))
        {
            model.Maximize(levels[kind]);
        }
        else
        {
            model.Minimize(levels[kind]);
        }
    }

    /// <summary>From now on a level may not get worse than the value reached.</summary>
    internal void Hold(LevelKind kind, long value)
    {
        if (IsMaximised(kind))
        {
            model.Add(levels[kind] >= value);
        }
        else
        {
            model.Add(levels[kind] <= value);
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
        var hints = new HintValues();
        var chosen = placement.Segments.Select(s => s.Pattern).ToHashSet();
        var counts = placement.Segments.CountBy(s => s).ToDictionary();
        model.ClearHints();
        for (var i = 0; i < made.Length; i++)
        {
            Hint(made[i], placement.Made[i] ? 1 : 0);
        }

        for (var i = 0; i < panels.Length; i++)
        {
            Hint(panels[i], placement.Panels.Contains(i) ? 1 : 0);
        }

        for (var i = 0; i < patterns.Length; i++)
        {
            Hint(patterns[i], chosen.Contains(i) ? 1 : 0);
        }

        foreach (var segment in segments)
        {
            Hint(segment.Count, counts.GetValueOrDefault(segment.Segment));
        }

        foreach (var (variable, value) in followers)
        {
            Hint(variable, value(hints));
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

        var placement = new Placement(
            [.. made.Select(v => solver.BooleanValue(v))],
            [.. problem.Panels.Where(p => solver.BooleanValue(panels[p.Index])).Select(p => p.Index)],
            used.ToImmutable(),
            []);
        return placement with { Values = PlacementValues.Of(problem, placement) };
    }

    private void AddSegments(SegmentOptions options)
    {
        foreach (var (list, all) in byPanel.Zip(options.ByPanel).Concat(bySolid.Zip(options.ByRuns)))
        {
            list.AddRange(all.Select(o => new SegmentVariable(o, model.NewIntVar(0, o.Most, ""))));
            segments.AddRange(list);
        }
    }

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

    /// <summary>An offcut is milled and ripped in at most one way.</summary>
    private void OnePatternPerOffcut()
    {
        foreach (var group in problem.Patterns.Select((p, i) => (p.OffcutIndex, Variable: patterns[i])).GroupBy(x => x.OffcutIndex))
        {
            model.AddAtMostOne(group.Select(x => x.Variable));
        }
    }

    /// <summary>Segments and the kerfs between them fit into their clear stretch.</summary>
    private void SegmentsFitTheirRun()
    {
        var grid = problem.Lengths;
        var kerf = grid.Up(problem.Shop.TableSaw.Kerf);
        foreach (var group in segments.GroupBy(s => (s.Segment.Pattern, s.Segment.Lane, s.Segment.Run)))
        {
            var room = grid.Down(problem.Patterns[group.Key.Pattern].Runs[group.Key.Run].Length) + kerf;
            var list = group.ToList();
            model.Add(LinearExpr.WeightedSum(list.Select(s => s.Count).ToArray(), list.Select(s => grid.Up(s.Option.Needed) + kerf).ToArray())
                <= room * patterns[group.Key.Pattern]);
        }
    }

    /// <summary>Net widths add up to the blanks' width with trim and the asked chance in hand, and not beyond clamps and machines.</summary>
    private void StripsFillTheWidth(PanelCandidate panel)
    {
        var strips = byPanel[panel.Index];
        var counts = strips.Select(s => s.Count).ToArray();
        var perStrip = Grid.Hundredths.Up(panel.Needs.WidthPerStrip);
        model.Add(LinearExpr.WeightedSum(counts, strips.Select(s => s.Width - perStrip).ToArray())
            >= Grid.Hundredths.Up(panel.Needs.WidthBase) * panels[panel.Index]);
        model.Add(LinearExpr.WeightedSum(counts, strips.Select(s => s.Width + 1).ToArray())
            <= Grid.Hundredths.Down(panel.WidestRough) * panels[panel.Index]);
    }

    /// <summary>As many strips as the design wishes, none when the glue-up is not made.</summary>
    private void StripsAreFewEnough(PanelCandidate panel)
    {
        var count = LinearExpr.Sum(panelSpecies[panel.Index].Select(s => s.Count));
        model.Add(count >= panel.Wish.MinimumStrips * panels[panel.Index]);
        model.Add(count <= panel.Wish.MaximumStrips * panels[panel.Index]);
    }

    /// <summary>
    /// Strips that look alike can be kept apart: no more of them than of strips that go beside one of them, plus one; and each has a neighbour it goes with.
    /// Needed, and nearly always enough; the order is checked afterwards. In a graduated panel each species comes once.
    /// </summary>
    private void AlikeStripsStayApart(PanelCandidate panel)
    {
        if (!panel.IsStriped)
        {
            return;
        }

        var counts = panelSpecies[panel.Index];
        if (panel.Wish.Pattern == StripPattern.Graduated)
        {
            foreach (var species in counts)
            {
                model.Add(species.Count <= 1);
            }

            return;
        }

        var conflicts = new SpeciesConflicts(counts.Select(c => c.Species), problem.Shop.MinimumContrast);
        foreach (var clique in conflicts.Cliques())
        {
            model.Add(Sum(counts, clique) <= Sum(counts, conflicts.GoingWithAny(clique)) + panels[panel.Index]);
        }

        foreach (var species in counts)
        {
            model.Add(Sum(counts, conflicts.GoingWithAny([species.Species])) >= species.IsPresent);
        }
    }

    private static LinearExpr Sum(List<SpeciesCount> counts, ImmutableHashSet<string> species) =>
        LinearExpr.Sum(counts.Where(c => species.Contains(c.Species)).Select(c => c.Count));

    /// <summary>The glue-ups of a part give at least as many blanks as the gift needs, and none is made that could be left out.</summary>
    private void PanelsServeTheirGift()
    {
        foreach (var gift in problem.Gifts)
        {
            foreach (var part in gift.Product.Parts.Where(p => p.Kind == PartKind.Panel))
            {
                var candidates = problem.Panels.Where(p => p.GiftIndex == gift.Index && p.Part.Key == part.Key).ToList();
                var yield = LinearExpr.WeightedSum(
                    candidates.Select(c => panels[c.Index]).ToArray(), candidates.Select(c => (long)c.Yield).ToArray());
                model.Add(yield >= part.Count * made[gift.Index]);
                foreach (var candidate in candidates)
                {
                    model.AddImplication(panels[candidate.Index], made[gift.Index]);
                    model.Add(yield <= part.Count - 1 + candidate.Yield).OnlyEnforceIf(panels[candidate.Index]);
                    if (candidate.Slot > 0)
                    {
                        model.AddImplication(panels[candidate.Index], panels[candidate.Index - 1]);
                    }
                }
            }
        }
    }

    /// <summary>Each run of solid parts of a gift that is made comes from a strip of its own. A lane much wider than the parts is not used: it is ripped first.</summary>
    private void EveryRunHasABoard()
    {
        foreach (var run in problem.Runs)
        {
            model.Add(LinearExpr.Sum(bySolid[run.Index].Select(s => s.Count)) == run.Runs.Length * made[run.GiftIndex]);
        }
    }
}
