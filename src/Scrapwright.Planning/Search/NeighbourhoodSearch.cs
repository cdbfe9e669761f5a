using System.Collections.Immutable;
using System.Globalization;
using Google.OrTools.Sat;
using Scrapwright.Core.Plans;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>
/// Improves a placement piece by piece: a few gifts are taken apart and planned anew, with untouched wood beside their own, while all else stays; by the
/// solver, or by the cheapest strips at the bound's prices. Never costs an earlier level. For problems too large to be searched whole.
/// </summary>
internal sealed class NeighbourhoodSearch(Problem problem, SegmentOptions options, PlanLimits limits, PricedPlacement? priced, Placement first)
{
    /// <summary>Segments a solver's neighbourhood has at most: it is solved in less than half a second.</summary>
    private const long MostSegments = 1000;

    private const double SolverSeconds = 0.5;

    /// <summary>So many neighbourhoods in a row without a gain, and the level is given up.</summary>
    internal const int MostFruitless = 400;

    private readonly Random random = new(limits.Seed);
    private readonly Dictionary<LevelKind, int> fruitless = [];

    /// <summary>The placement as far as it has come.</summary>
    internal Placement Current { get; private set; } = first;

    /// <summary>Deterministic work done so far: the solver's own measure, and a fixed amount for each neighbourhood without it.</summary>
    internal double Work { get; private set; }

    /// <summary>One neighbourhood for one level; true when the placement got better on it.</summary>
    /// <param name="kind">The level.</param>
    /// <param name="seconds">Longest time, or work, that is left.</param>
    /// <param name="accept">Takes a placement and gives the glue-up whose strips find no order, or null when all do.</param>
    /// <param name="cancellationToken">Ends it early.</param>
    internal bool Improve(LevelKind kind, double seconds, Func<Placement, int?> accept, CancellationToken cancellationToken)
    {
        var before = Current.ValueOf(kind);
        var candidate = kind == LevelKind.WoodUsed && priced is not null && random.Next(3) > 0 ? Recreated() : Solved(kind, seconds, cancellationToken);
        if (candidate is null || !IsBetter(candidate, Current) || accept(candidate) is not null)
        {
            fruitless[kind] = fruitless.GetValueOrDefault(kind) + 1;
            return false;
        }

        Current = candidate;
        fruitless[kind] = 0;
        return candidate.ValueOf(kind) != before;
    }

    /// <summary>Goes on from another placement.</summary>
    internal void Restart(Placement placement)
    {
        Current = placement;
        fruitless.Clear();
    }

    /// <summary>How many neighbourhoods in a row did not help a level.</summary>
    internal int Fruitless(LevelKind kind) => fruitless.GetValueOrDefault(kind);

    /// <summary>True when one placement beats another on the first level on which they differ.</summary>
    internal static bool IsBetter(Placement one, Placement other)
    {
        foreach (var (level, value) in one.Values)
        {
            var gain = value - other.ValueOf(level);
            if (gain != 0)
            {
                return gain > 0 == PlanModel.IsMaximised(level);
            }
        }

        return false;
    }

    private Placement? Recreated()
    {
        Work += 0.02;
        var gifts = Current.WithPartners(problem, PartnersFirst([.. SomeGifts(LevelKind.WoodUsed)]).Take(2 + random.Next(5)));
        var rest = Current.Without(problem, gifts);
        var pile = new OpenPile(problem);
        foreach (var segment in rest.Segments)
        {
            pile.Take(segment);
        }

        var placed = priced!.Place(gifts, pile, rest.Segments);
        var whole = new Placement(
            [.. rest.Made.Select((made, gift) => made || placed.Made.Contains(gift))], [.. rest.Panels.Concat(placed.Panels).Order()],
            [.. rest.Segments, .. placed.Segments], []);
        return whole with { Values = PlacementValues.Of(problem, whole) };
    }

    private Placement? Solved(LevelKind kind, double seconds, CancellationToken cancellationToken)
    {
        var scope = PickScope(kind);
        var model = new PlanModel(problem, options, scope);
        model.Suggest(Current);
        model.AimFrom(kind);
        var solver = new CpSolver { StringParameters = Parameters(kind, Math.Min(seconds, SolverSeconds)) };
        using var stop = cancellationToken.Register(solver.StopSearch);
        var status = solver.Solve(model.Model);
        Work += solver.Response?.DeterministicTime ?? 0;
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? model.Read(solver) : null;
    }

    /// <summary>Gifts one after the other until the solver has enough to do, with a share of the wood nobody uses.</summary>
    private Scope PickScope(LevelKind kind)
    {
        var used = Current.Segments.Select(s => problem.Patterns[s.Pattern].OffcutIndex).ToHashSet();
        var untouched = Enumerable.Range(0, problem.Offcuts.Length).Where(o => !used.Contains(o)).ToArray();
        random.Shuffle(untouched);
        var wood = untouched.Take(10 + random.Next(30)).ToImmutableArray();
        var order = PartnersFirst(SomeGifts(kind).ToList());
        for (var count = 2; ; count++)
        {
            var scope = Scope.Of(problem, Current, order.Take(count), wood);
            if (count >= order.Count || scope.SegmentCount(options) > MostSegments || count > 8)
            {
                return scope;
            }
        }
    }

    /// <summary>Now and then those that may share a glue-up with the first gift come next: by chance alone they would hardly meet.</summary>
    private List<int> PartnersFirst(List<int> order)
    {
        var partners = problem.SharedOf[order[0]].SelectMany(p => p.Shares).Select(s => s.GiftIndex).ToHashSet();
        return partners.Count == 0 || random.Next(2) == 0
            ? order
            : [order[0], .. order.Skip(1).OrderBy(g => partners.Contains(g) ? 0 : 1)];
    }

    /// <summary>All gifts in an order that puts those first that have most to gain on a level, with some chance.</summary>
    private IEnumerable<int> SomeGifts(LevelKind kind)
    {
        var gains = kind switch
        {
            LevelKind.GiftsMade => [.. problem.Gifts.Select(g => Current.Made[g.Index] ? 0L : 3)],
            LevelKind.Looks => PlacementValues.LackingLooks(problem, Current),
            LevelKind.StripsAsBefore => StripsAsBefore.Lacking(problem, Current),
            _ => new long[problem.Gifts.Length],
        };
        return gains.Select((gain, gift) => (gift, Luck: -Math.Log(1 - random.NextDouble()) / (gain + 0.15))).OrderBy(x => x.Luck).Select(x => x.gift);
    }

    private string Parameters(LevelKind kind, double seconds)
    {
        var limit = limits.Deterministic ? "max_deterministic_time" : "max_time_in_seconds";
        var relaxation = kind == LevelKind.WoodUsed && random.Next(2) == 0 ? "cp_model_presolve:false linearization_level:2 " : "";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{relaxation}random_seed:{random.Next(1 << 30)} num_workers:{(limits.Deterministic ? 1 : limits.Workers)} {limit}:{seconds:0.###}");
    }
}
