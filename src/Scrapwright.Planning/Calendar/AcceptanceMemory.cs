using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Planning.Calendar;

/// <summary>
/// Whether a search goes on from a placement: when it costs no more than where the search stands, or than where it stood some steps ago (late acceptance; Burke and Bykov, 2017; from memory). The cost is one number
/// for all levels, so that a way to something better may lead over what is a little worse; what is better is decided by the levels.
/// </summary>
internal sealed class AcceptanceMemory
{
    // What a level counts beside the next: so much more that it mostly decides, so little that it may give way for a while. Our own choice, by measurement.
    private const double LatenessBesideNext = 3;
    private const double HoursOfReady = 1;
    private const double HoursOfSlackDay = 3;
    private const double HoursOfSetUpMinute = 0.1;

    // So many steps back are remembered. Our own choice, by measurement: 20 and 200 are no better on the example.
    private const int Steps = 50;

    private readonly ScheduleFacts facts;
    private readonly double[] weights;
    private readonly double[] costs = new double[Steps];
    private double current;
    private int step;

    /// <summary>A search that begins somewhere.</summary>
    /// <param name="facts">The problem.</param>
    /// <param name="first">Where it begins.</param>
    internal AcceptanceMemory(ScheduleFacts facts, PlacedTasks first)
    {
        this.facts = facts;
        var dated = facts.Levels.Count(l => l.Kind == ScheduleLevelKind.Lateness);
        weights = [.. facts.Levels.Select((level, i) => level.Kind switch
        {
            ScheduleLevelKind.Lateness => Math.Pow(LatenessBesideNext, dated - i),
            ScheduleLevelKind.AllReady => HoursOfReady / 60,
            ScheduleLevelKind.Slack => HoursOfSlackDay,
            ScheduleLevelKind.Moved => 1,
            _ => HoursOfSetUpMinute,
        })];
        Begin(first);
    }

    /// <summary>Forgets what was.</summary>
    /// <param name="first">Where it begins.</param>
    internal void Begin(PlacedTasks first)
    {
        current = Cost(first);
        Array.Fill(costs, current);
    }

    /// <summary>True when the search goes on from there.</summary>
    /// <param name="next">A placement.</param>
    internal bool Accepts(PlacedTasks next)
    {
        var cost = Cost(next);
        var place = step++ % costs.Length;
        var isAccepted = cost <= current || cost <= costs[place];
        if (isAccepted) current = cost;
        costs[place] = Math.Min(costs[place], current);
        return isAccepted;
    }

    /// <summary>Levels, and the mean of all starts in hours.</summary>
    private double Cost(PlacedTasks some)
    {
        var cost = 0.0;
        for (var i = 0; i < weights.Length; i++) cost += weights[i] * some.Values[i];
        long starts = 0;
        foreach (var start in some.Start) starts += start;
        return cost + (starts / 60.0 / Math.Max(1, facts.Count));
    }
}
