using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Planning.Building;
using Scrapwright.Planning.Problems;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Ideas;

/// <summary>
/// A workshop in which an offcut serves one part, or nothing. The gift it would serve and those that have it in the plan before are placed anew; all else stays as it is.
/// </summary>
internal sealed class OffcutTrial
{
    /// <summary>Segments a model has at most; untouched offcuts beyond that are left out, and the answer is then not proven.</summary>
    private const long MostSegments = 20_000;

    private const int LowestPriority = 9;

    private static readonly LevelKind[] Levels = [LevelKind.GiftsMade, LevelKind.Looks, LevelKind.WoodUsed, LevelKind.ClampLoads];

    private readonly Problem problem;
    private readonly SegmentOptions options;
    private readonly Placement start;
    private readonly int[] free;
    private readonly int offcut;
    private readonly OffcutTarget? serves;

    private OffcutTrial(PlanRequest request, Plan? former, OffcutTarget target, string label, bool isServing)
    {
        problem = ProblemMaker.Make(request, former);
        options = new SegmentOptions(problem);
        offcut = problem.Offcuts.Index().First(o => o.Item.Label == label).Index;
        serves = isServing ? target : null;
        var users = former is null ? [] : former.GlueUps.Where(g => g.Strips.Any(s => s.Offcut == label)).SelectMany(g => g.ForGifts()).Concat(former.Boards.Where(b => b.Offcut == label).Select(b => b.Gift)).ToHashSet();
        var now = former is null ? Placement.Done(problem) : FormerPlacement.AsItWas(problem, options);
        free = [.. now.WithPartners(problem, problem.Gifts.Where(g => users.Contains(g.Gift.Label) || g.Gift.Label == target.Gift.Gift.Label).Select(g => g.Index))];
        start = FirstPlacement.Complete(problem, options, now);
        if (!Serves(start))
        {
            start = FirstPlacement.Complete(problem, options, now.Without(problem, [.. free]));
        }
    }

    /// <summary>The best plan in which the offcut serves the part; null when there is none, or none was found in time.</summary>
    internal static (Plan? Plan, bool IsProven) Serving(OffcutTarget target, Plan? former, string offcut, PlanLimits limits, CancellationToken cancellationToken) =>
        Trial(target, former, offcut).Best(limits, cancellationToken);

    /// <summary>The best plan in which the offcut stays whole.</summary>
    internal static (Plan? Plan, bool IsProven) LeavingAlone(OffcutTarget target, Plan? former, string offcut, PlanLimits limits, CancellationToken cancellationToken)
    {
        var choices = target.Request.Choices;
        var request = target.Request with { Choices = choices with { Saved = choices.Saved.Add(offcut), Pins = [.. choices.Pins.Where(p => p.Offcut != offcut)] } };
        return new OffcutTrial(request, former, target, offcut, isServing: false).Best(limits, cancellationToken);
    }

    /// <summary>What the first placement promises: wood of the offcut that is put to use when it serves the part, [mm³]; null when it finds no way.</summary>
    internal static long? Promise(OffcutTarget target, Plan? former, string offcut)
    {
        var trial = Trial(target, former, offcut);
        return trial.Serves(trial.start)
            ? trial.start.Segments.Where(s => trial.problem.Patterns[s.Pattern].OffcutIndex == trial.offcut).Sum(s => PlacementValues.Wood(trial.problem, s))
            : null;
    }

    private static OffcutTrial Trial(OffcutTarget target, Plan? former, string offcut)
    {
        // First in the order of gifts, so that the first placement gives it the offcut; the pin says so of a panel part.
        var request = target.Request with
        {
            Gifts = [.. target.Request.Gifts.Select(g => g with { Priority = g.Label == target.Gift.Gift.Label ? 1 : Math.Min(LowestPriority, g.Priority + 1) })],
            Choices = target.Part is null
                ? target.Request.Choices
                : target.Request.Choices with { Pins = [.. target.Request.Choices.Pins.Append(new Pin(offcut, target.Gift.Gift.Label, target.Part)).Distinct()] },
        };
        return new OffcutTrial(request, former, target, offcut, isServing: true);
    }

    private (Plan? Plan, bool IsProven) Best(PlanLimits limits, CancellationToken cancellationToken)
    {
        var (scope, isWhole) = ScopeOf();
        var model = new PlanModel(problem, options, scope);
        if (serves is not null && !model.RequireFrom(GiftOf(serves), serves.Part, RunOf(serves), offcut))
        {
            return (null, isWhole);
        }

        model.Suggest(start);
        var search = new OtherwiseSearch(limits, cancellationToken);
        var found = search.Best(model, Levels, placement => PlanBuilder.FindUnorderable(problem, placement));

        // A search that ends early may come back with less than it began with.
        if (Serves(start) && (found is null || NeighbourhoodSearch.IsBetter(start, found)))
        {
            found = start;
        }

        var plan = found is null ? null : Planner.Audited(PlanBuilder.Build(problem, found, problem.Levels.ToDictionary(k => k, k => PlacementValues.TrivialBound(problem, k))));
        return (plan, isWhole && search.IsProven);
    }

    /// <summary>True when a placement found without the solver does what is asked.</summary>
    private bool Serves(Placement placement) => PlanBuilder.FindUnorderable(problem, placement) is null
        && (serves is null || (placement.Made[GiftOf(serves)] && placement.Segments.Any(s => problem.Patterns[s.Pattern].OffcutIndex == offcut && IsForPart(s, serves))));

    private bool IsForPart(Segment segment, OffcutTarget target) => segment.Panel >= 0
        ? target.Part is { } part && problem.Panels[segment.Panel].IsFor(GiftOf(target), part)
        : target.Part is null && segment.Solid == RunOf(target);

    private int GiftOf(OffcutTarget target) => problem.Gifts.First(g => g.Gift.Label == target.Gift.Gift.Label).Index;

    private int RunOf(OffcutTarget target) =>
        target.Run is null ? -1 : problem.Runs.First(r => r.GiftIndex == GiftOf(target) && r.Runs[0].Mark == target.Run.Runs[0].Mark).Index;

    private (Scope Scope, bool IsWhole) ScopeOf()
    {
        var used = start.Segments.Select(s => problem.Patterns[s.Pattern].OffcutIndex).ToHashSet();
        List<int> untouched = [.. Enumerable.Range(0, problem.Offcuts.Length).Where(o => o != offcut && !used.Contains(o))];
        var isWhole = true;
        var scope = Scope.Of(problem, start, free, [.. untouched, offcut]);
        while (scope.SegmentCount(options) > MostSegments && untouched.Count > 0)
        {
            isWhole = false;
            untouched = [.. untouched.Where((_, i) => i % 2 == 1)];
            scope = Scope.Of(problem, start, free, [.. untouched, offcut]);
        }

        return (scope, isWhole);
    }
}
