using System.Diagnostics;
using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Planning.Calendar;

/// <summary>Passes of evenings one after the other on one thread: any aim, or one near the best so far, often with the first evenings as they were.</summary>
internal sealed class EveningClimb
{
    // How often each evening is filled, from pass to pass another number, and of a hundred passes how many begin anew. Our own choice, by measurement.
    private const int FewestFillings = 5;
    private const int MostFillings = 25;
    private const int AnewOfHundred = 20;

    // The worth of a date falls quickly from the most urgent on. Our own choice.
    private const double PowerOfDate = 4;

    private readonly ScheduleFacts facts;
    private readonly StartRanges ranges;
    private readonly Random random;
    private readonly EveningFilling filling;
    private readonly DeliveryWaves waves;
    private readonly long[] tails;
    private readonly int[] priorities;
    private readonly double[] rest;
    private EveningAim aim;
    private EveningPath path = new([], []);

    /// <summary>A climb that has not begun.</summary>
    internal EveningClimb(ScheduleFacts facts, StartRanges ranges, int seed)
    {
        (this.facts, this.ranges) = (facts, ranges);
        random = new Random(seed);
        filling = new EveningFilling(facts, ranges, random);
        tails = PriorityRules.Tails(facts);
        priorities = [.. facts.Deliveries.Select(d => d.Priority)];
        waves = new DeliveryWaves(facts, PriorityRules.LateByDue(facts, ranges, tails));
        var longest = Math.Max(1.0, tails.DefaultIfEmpty(0).Max());
        rest = [.. tails.Select(t => t / longest)];
        aim = EveningAim.Draw(random, priorities);
    }

    /// <summary>The best so far, or null.</summary>
    internal PlacedTasks? Best { get; private set; }

    /// <summary>Goes on from a placement when it is better than the best so far.</summary>
    internal void Consider(PlacedTasks placement)
    {
        if (Best is not null && LevelValues.Compare(placement.Values, Best.Values) >= 0) return;
        Best = placement;
        path = EveningPath.Of(placement, filling.Groups, filling.Evenings);
    }

    /// <summary>Tries passes until time or passes are over, or the bounds are reached.</summary>
    internal void Run(double seconds, int passes, long[] bounds, CancellationToken cancellationToken)
    {
        var clock = Stopwatch.StartNew();
        for (var pass = 0; pass < passes && MayGoOn() && Best?.Values.AsSpan().SequenceEqual(bounds) != true; pass++) Try(MayGoOn);

        bool MayGoOn() => clock.Elapsed.TotalSeconds < seconds && !cancellationToken.IsCancellationRequested;
    }

    private void Try(Func<bool> mayGoOn)
    {
        var isAnew = Best is null || random.Next(100) < AnewOfHundred;
        var next = isAnew ? EveningAim.Draw(random, priorities) : aim.Near(random);
        var kept = isAnew || random.Next(3) == 0 ? 0 : random.Next(path.Before.Length);
        var dateRank = Ranks([.. PriorityRules.LateByDue(facts, ranges, tails, next.Later).Select(late => (double)late)]);
        var steps = Ranks(waves.Staggered(next.Steps));
        var ranks = Ranks([.. steps.Select((s, task) => ((1 - next.Dates) * s) + (next.Dates * dateRank[task]))]);
        double[] worth = [.. rest.Select((r, task) => 1 + (next.WorthOfRest * r) + (next.WorthOfDate * Math.Pow(1 - dateRank[task], PowerOfDate)))];
        var placement = filling.Run(ranks, worth, next.Chance, random.Next(FewestFillings, MostFillings + 1), kept == 0 ? null : path, kept, mayGoOn);
        if (placement is null || (Best is not null && LevelValues.Compare(placement.Values, Best.Values) > 0)) return;
        (Best, aim, path) = (placement, next, filling.Path);
    }

    /// <summary>By task: its place when all stand in order, from 0 to 1.</summary>
    private double[] Ranks(double[] keys)
    {
        var ranks = new double[facts.Count];
        var place = 0;
        foreach (var task in Enumerable.Range(0, facts.Count).OrderBy(t => keys[t])) ranks[task] = place++ / (double)facts.Count;
        return ranks;
    }
}
