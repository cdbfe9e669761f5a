namespace Scrapwright.Core.Calendar.Building;

/// <summary>One task is moved; finds out which others have to go to a later place.</summary>
internal sealed class Moving
{
    private readonly ScheduleFacts facts;
    private readonly int moved;
    private readonly int[] old;
    private readonly int[] byOldStart;
    private readonly long[] keys;
    private readonly bool[] pushed;

    /// <summary>Begins with the schedule before.</summary>
    internal Moving(ScheduleFacts facts, StartRanges ranges, Schedule schedule, int moved)
    {
        (this.facts, this.moved) = (facts, moved);
        Placing = new ListPlacing(facts, ranges);
        old = new int[facts.Count];
        Array.Fill(old, ScheduleFacts.None);
        foreach (var task in schedule.Tasks)
        {
            if (facts.Number.TryGetValue(task.Task, out var number)) old[number] = task.Start;
        }

        var place = facts.Order.Select((task, i) => (task, i)).ToDictionary(p => p.task, p => p.i);
        byOldStart = [.. facts.Order.OrderBy(t => old[t] == ScheduleFacts.None ? ScheduleFacts.Never : old[t]).ThenBy(t => place[t])];
        keys = new long[facts.Count];
        for (var i = 0; i < byOldStart.Length; i++) keys[byOldStart[i]] = i;
        pushed = [.. old.Select(start => start == ScheduleFacts.None)];
    }

    /// <summary>The placing, which knows the task that found no place.</summary>
    internal ListPlacing Placing { get; }

    /// <summary>All tasks in their new places, or null when there are none.</summary>
    internal PlacedTasks? Run()
    {
        for (var task = 0; task < facts.Count; task++) Placing.Floor[task] = task == moved ? 0 : Math.Max(0, old[task]);
        while (true)
        {
            Placing.Bench.Clear();
            if (!Placing.PlaceFixed()) return null;
            Keep();
            if (PushBroken()) continue;
            var kept = Placing.Bench.Placed;
            if (Placing.PlaceRest(keys)) return PlacedTasks.Of(facts, Placing.Bench);

            // A task before one that stays has no place: what follows it has to go too.
            if (Placing.Stuck == ScheduleFacts.None || kept == facts.Count || !PushFollowers(Placing.Stuck)) return null;
        }
    }

    /// <summary>Leaves at their old start all that fit there beside the moved one.</summary>
    private void Keep()
    {
        foreach (var task in byOldStart)
        {
            if (pushed[task] || Placing.Bench.Start[task] != ScheduleFacts.None) continue;
            if (!Placing.PlaceAt(task, old[task])) Push(task);
        }
    }

    /// <summary>Pushes tasks whose links no longer hold; true when there were any.</summary>
    private bool PushBroken()
    {
        var any = false;
        foreach (var task in facts.Order)
        {
            foreach (var link in facts.Into[task])
            {
                var (before, after) = (Placing.Bench.Start[link.Before], Placing.Bench.Start[link.After]);
                if (before == ScheduleFacts.None || after == ScheduleFacts.None) continue;
                var gap = after - before - facts.Minutes[link.Before];
                if (gap < link.Least) any |= Push(link.After);
                else if (gap > link.Most) any |= Push(link.Before);
            }
        }

        return any;
    }

    private bool PushFollowers(int task)
    {
        var any = false;
        foreach (var link in facts.OutOf[task]) any |= Push(link.After);
        if (any) return true;
        foreach (var link in facts.OutOf[task]) any |= PushFollowers(link.After);
        return any;
    }

    /// <summary>A task goes to a later place, and with it those that are placed together with it; false when they do already, or may not.</summary>
    private bool Push(int task)
    {
        var any = false;
        for (var other = 0; other < facts.Count; other++)
        {
            if (Placing.Groups.Of[other] != Placing.Groups.Of[task] || facts.Fixed[other] != ScheduleFacts.None || pushed[other]) continue;
            pushed[other] = true;
            any = true;
        }

        return any;
    }
}
