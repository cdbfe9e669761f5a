using System.Diagnostics;
using Scrapwright.Core.Plans;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>
/// Improves one level after the other, each without costing an earlier one. A problem that the solver can take in whole is searched whole, which also
/// proves; what time is left, and larger problems, go neighbourhood by neighbourhood. Bounds for wood and glue-ups come from column generation.
/// </summary>
internal sealed class LevelSearch(Problem problem, SegmentOptions options, PlanLimits limits, Placement first, TimeSpan spent, CancellationToken cancellationToken)
{
    /// <summary>Most segments of a problem that is searched whole.</summary>
    private const long MostSegmentsWhole = 25_000;

    /// <summary>Most segments of a problem that the solver is through with sooner than neighbourhoods would help.</summary>
    private const long MostSegmentsAtOnce = 2_500;

    /// <summary>Share of the time still left that each level may take, in the order of the levels.</summary>
    private static readonly double[] Shares = [0.3, 0.4, 0.9, 0.5, 1.0];

    /// <summary>Of a level's time, the share for the search of the whole, when the level is one that neighbourhoods help.</summary>
    private const double ShareWhole = 0.7;

    private const double LeastSeconds = 0.3;

    private readonly Stopwatch clock = Stopwatch.StartNew();
    private WholeSearch? whole;
    private NeighbourhoodSearch? neighbourhoods;
    private double workDone;

    /// <summary>The best placement so far.</summary>
    internal Placement Best { get; private set; } = first;

    /// <summary>Runs through the levels.</summary>
    /// <param name="bounds">Bounds known so far by level; made better here.</param>
    /// <param name="accept">Takes a placement and gives the glue-up whose strips find no order, or null when all do.</param>
    /// <param name="tell">Told of level, value, bound, and whether the level is done with.</param>
    internal void Run(Dictionary<LevelKind, long> bounds, Func<Placement, int?> accept, Action<LevelKind, long, long, bool> tell)
    {
        if (options.Total <= MostSegmentsWhole)
        {
            whole = new WholeSearch(new PlanModel(problem, options, Scope.All(problem)), limits, cancellationToken);
            whole.Start(Best);
        }

        var levels = problem.Levels;
        for (var i = 0; i < levels.Length && !cancellationToken.IsCancellationRequested; i++)
        {
            var kind = levels[i];
            if (kind == LevelKind.Looks)
            {
                // Prices give a thrifty placement to go on from, also where they do not come up to its looks.
                BoundWood(bounds, accept);
            }

            if (ShareFirst(kind) is > 0 and var share && options.Total > MostSegmentsAtOnce && IsOpen(kind, bounds) && whole is not null)
            {
                SearchNeighbourhoods(kind, SecondsLeft() * (1 - share), bounds, accept, tell);
            }

            var end = SecondsLeft() * (1 - (i == levels.Length - 1 ? 1 : Shares[i]));
            if (IsOpen(kind, bounds) && whole is not null)
            {
                SearchWhole(kind, kind is LevelKind.WoodUsed or LevelKind.StripsAsBefore ? end + ((SecondsLeft() - end) * (1 - ShareWhole)) : end, bounds, accept, tell);
            }

            if (IsOpen(kind, bounds) && (whole is null || kind is LevelKind.WoodUsed or LevelKind.StripsAsBefore))
            {
                SearchNeighbourhoods(kind, end, bounds, accept, tell);
            }

            tell(kind, Best.ValueOf(kind), bounds[kind], true);
            whole?.Hold(kind, Best.ValueOf(kind));
            if (Best.Values[0].Value == 0)
            {
                break;
            }
        }
    }

    /// <summary>Of the time left, the share for neighbourhoods before the whole is searched: they soon come near, and keep wood while looks get better; the whole proves.</summary>
    private static double ShareFirst(LevelKind kind) => kind switch
    {
        LevelKind.Looks => 0.25,
        LevelKind.WoodUsed => 0.4,
        _ => 0,
    };

    private bool IsOpen(LevelKind kind, Dictionary<LevelKind, long> bounds) => Best.ValueOf(kind) != bounds[kind] && SecondsLeft() > LeastSeconds;

    private double SecondsLeft() => limits.Seconds - (limits.Deterministic
        ? workDone + (whole?.Work ?? 0) + (neighbourhoods?.Work ?? 0)
        : (spent + clock.Elapsed).TotalSeconds);

    private void SearchWhole(LevelKind kind, double end, Dictionary<LevelKind, long> bounds, Func<Placement, int?> accept, Action<LevelKind, long, long, bool> tell)
    {
        while (SecondsLeft() > end + LeastSeconds && !cancellationToken.IsCancellationRequested)
        {
            if (whole!.Improve(kind, Math.Max(LeastSeconds, SecondsLeft() - end), bounds[kind], tell) is not { } found)
            {
                return;
            }

            if (accept(found.Placement) is { } panel)
            {
                whole.Forbid(found.Placement, panel);
                continue;
            }

            // The model's word for a book-matched panel is nearly always right; where it is not, the placement at hand is kept.
            if (!NeighbourhoodSearch.IsBetter(Best, found.Placement))
            {
                Take(found.Placement);
            }

            bounds[kind] = found.Bound;
            return;
        }
    }

    private void SearchNeighbourhoods(LevelKind kind, double end, Dictionary<LevelKind, long> bounds, Func<Placement, int?> accept, Action<LevelKind, long, long, bool> tell)
    {
        neighbourhoods ??= new NeighbourhoodSearch(problem, options, limits, null, Best);
        if (kind != LevelKind.Looks && NeighbourhoodSearch.IsBetter(Best, neighbourhoods.Current))
        {
            // The placement by prices did not come up to the best one on the levels before: its thrift is no use.
            neighbourhoods.Restart(Best);
        }

        while (SecondsLeft() > end + LeastSeconds && neighbourhoods.Current.ValueOf(kind) != bounds[kind]
            && neighbourhoods.Fruitless(kind) < NeighbourhoodSearch.MostFruitless && !cancellationToken.IsCancellationRequested)
        {
            if (neighbourhoods.Improve(kind, SecondsLeft() - end, accept, cancellationToken) && NeighbourhoodSearch.IsBetter(neighbourhoods.Current, Best))
            {
                Take(neighbourhoods.Current);
                tell(kind, Best.ValueOf(kind), bounds[kind], false);
            }
        }
    }

    /// <summary>Bounds wood and glue-ups for the gifts that are made, and takes the bound's prices for a placement of its own.</summary>
    private void BoundWood(Dictionary<LevelKind, long> bounds, Func<Placement, int?> accept)
    {
        var worth = Best.ValueOf(LevelKind.GiftsMade);
        var bound = new WoodBound(problem, options, worth);
        var share = SecondsLeft() * 0.15;
        bound.Run(Best, limits.Deterministic ? 20 : 500, limits.Deterministic ? null : TimeSpan.FromSeconds(share), cancellationToken);
        bounds[LevelKind.WoodUsed] = Math.Max(bounds[LevelKind.WoodUsed], bound.Value + problem.DoneSegments.Sum(s => PlacementValues.Wood(problem, s)));
        bounds[LevelKind.ClampLoads] = Math.Max(bounds[LevelKind.ClampLoads], bound.LeastGlueUps + problem.DonePanels.Count());
        workDone += limits.Deterministic ? 0.5 : 0;
        var priced = new PricedPlacement(problem, options, bound.Groups, bound.Prices);
        var placed = Price(priced, accept);
        neighbourhoods = new NeighbourhoodSearch(problem, options, limits, priced, placed ?? Best);
        if (placed is not null && NeighbourhoodSearch.IsBetter(placed, Best))
        {
            Take(placed);
        }
    }

    /// <summary>A placement by prices that makes as much as the best one; those that found no wood come first in the next try.</summary>
    private Placement? Price(PricedPlacement priced, Func<Placement, int?> accept)
    {
        var end = SecondsLeft() * 0.85;
        var order = problem.Gifts.OrderByDescending(g => g.Weight).Select(g => g.Index).ToList();
        for (var attempt = 0; attempt < (whole is null ? 8 : 1) && SecondsLeft() > end && !cancellationToken.IsCancellationRequested; attempt++)
        {
            workDone += limits.Deterministic ? 0.2 : 0;
            var placed = priced.PlaceAll(order);
            if (placed.ValueOf(LevelKind.GiftsMade) >= Best.ValueOf(LevelKind.GiftsMade) && accept(placed) is null)
            {
                return placed;
            }

            order = [.. order.Where(g => !placed.Made[g]), .. order.Where(g => placed.Made[g])];
        }

        return null;
    }

    private void Take(Placement placement)
    {
        Best = placement;
        whole?.Start(placement);
    }
}
