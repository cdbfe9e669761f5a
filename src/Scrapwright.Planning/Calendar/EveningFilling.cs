using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Planning.Calendar;

/// <summary>
/// Fills evening after evening: each is filled many times, task by task by a rule drawn by chance, and the filling in which most is done stays. Little goes to waste so: settings serve much, and what is left of an evening
/// is used by what fits it. (Dispatching rules with many draws, one evening at a time; rules of dispatching from memory.)
/// </summary>
internal sealed class EveningFilling
{
    // What an evening's setting up counts beside its work. Our own choice: little more than between alike.
    private const double WorthOfSetUp = 0.1;

    private readonly ScheduleFacts facts;
    private readonly ListPlacing placing;
    private readonly EveningChoice choice;
    private readonly Random random;
    private readonly int[] open;
    private readonly List<(int Group, int Placed)> order = [];
    private readonly List<int> before = [];
    private readonly double[] rank;

    /// <summary>Empty evenings.</summary>
    internal EveningFilling(ScheduleFacts facts, StartRanges ranges, Random random)
    {
        (this.facts, this.random) = (facts, random);
        placing = new ListPlacing(facts, ranges);
        choice = new EveningChoice(facts, ranges, placing);
        open = new int[placing.Groups.Members.Length];
        rank = new double[facts.Count];
        Evenings = [.. CalendarWindows.Of(facts.Problem).Select((window, i) => i == 0 ? 0 : window.Start)];
    }

    /// <summary>When each evening begins; what has no hours may also be done between it and the next. [min]</summary>
    internal int[] Evenings { get; }

    /// <summary>What is placed together.</summary>
    internal TaskGroups Groups => placing.Groups;

    /// <summary>The path of the last filling.</summary>
    internal EveningPath Path => new([.. order.Select(o => o.Group)], [.. before]);

    /// <summary>Fills all evenings; null when not all tasks find a place, or time is over.</summary>
    /// <param name="ranks">By task, from 0 (most urgent) to 1.</param>
    /// <param name="worth">By task: of a minute of its work.</param>
    /// <param name="chance">How much chance moves ranks.</param>
    /// <param name="fillings">How often each evening is filled.</param>
    /// <param name="path">The first evenings are taken from it.</param>
    /// <param name="kept">How many; none without a path.</param>
    /// <param name="mayGoOn">Asked before each evening; null when it always may.</param>
    internal PlacedTasks? Run(double[] ranks, double[] worth, double chance, int fillings, EveningPath? path, int kept, Func<bool>? mayGoOn = null)
    {
        if (!Begin() || (path is not null && !Repeat(path, kept))) return null;
        for (var evening = kept; evening < Evenings.Length && choice.May.Count > 0; evening++)
        {
            if (mayGoOn?.Invoke() == false) return null;
            StartEvening(evening);
            var until = evening + 1 < Evenings.Length ? Evenings[evening + 1] : ScheduleFacts.Never;
            if (!FillBest(Evenings[evening], until, ranks, worth, chance, fillings)) return null;
        }

        return placing.Bench.Placed == facts.Count ? PlacedTasks.Of(facts, placing.Bench) : null;
    }

    private bool Begin()
    {
        placing.Bench.Clear();
        order.Clear();
        before.Clear();
        choice.Clear();
        if (!placing.PlaceFixed()) return false;
        for (var group = 0; group < open.Length; group++)
        {
            open[group] = placing.Groups.Before[group];
            if (open[group] == 0) choice.Add(group);
        }

        return true;
    }

    private bool Repeat(EveningPath path, int kept)
    {
        for (var evening = 0; evening < kept; evening++)
        {
            StartEvening(evening);
            for (var i = path.Before[evening]; i < path.Before[evening + 1]; i++)
            {
                if (!Place(path.Groups[i])) return false;
            }
        }

        return true;
    }

    /// <summary>From here on nothing goes to an evening before.</summary>
    private void StartEvening(int evening)
    {
        before.Add(order.Count);
        Array.Fill(placing.Floor, Evenings[evening]);
    }

    /// <summary>Fills one evening so often and keeps the best filling; false when that cannot be repeated.</summary>
    private bool FillBest(int from, int until, double[] ranks, double[] worth, double chance, int fillings)
    {
        var mark = order.Count;
        int[] best = [];
        var bestValue = double.MinValue;
        for (var i = 0; i < fillings; i++)
        {
            // The first one goes by rank alone.
            for (var task = 0; task < rank.Length; task++) rank[task] = ranks[task] + (i == 0 ? 0 : (random.NextDouble() - 0.5) * chance);
            var value = Fill(from, until, worth);
            if (value > bestValue) (bestValue, best) = (value, [.. order.Skip(mark).Select(o => o.Group)]);
            while (order.Count > mark) TakeBack();
        }

        return best.All(Place);
    }

    /// <summary>Fills an evening by one rule.</summary>
    /// <returns>What it is worth.</returns>
    private double Fill(int from, int until, double[] worth)
    {
        var value = 0.0;
        choice.Begin(EveningRule.Draw(random), rank, from, until);
        while (choice.Next() is var (group, setUpMinutes) && Place(group))
        {
            value -= WorthOfSetUp * setUpMinutes;
            foreach (var task in placing.Groups.Members[group]) value += facts.Minutes[task] * worth[task];
        }

        return value;
    }

    private bool Place(int group)
    {
        var placed = placing.Bench.Placed;
        if (!placing.Place(group)) return false;
        order.Add((group, placed));
        choice.Remove(group);
        foreach (var after in placing.Groups.After[group])
        {
            if (--open[after] == 0) choice.Add(after);
        }

        return true;
    }

    private void TakeBack()
    {
        var (group, placed) = order[^1];
        order.RemoveAt(order.Count - 1);
        while (placing.Bench.Placed > placed) placing.Bench.TakeBack();
        foreach (var after in placing.Groups.After[group])
        {
            if (open[after]++ == 0) choice.Remove(after);
        }

        choice.Add(group);
    }
}
