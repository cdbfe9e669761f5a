namespace Scrapwright.Core.Calendar.Building;

/// <summary>The shop while tasks are put into it one after the other: what is taken, and which settings stand.</summary>
internal sealed class Bench
{
    private readonly ScheduleFacts facts;
    private readonly Profile[] resources;
    private readonly Profile[] stations;
    private readonly StandingSetUps setUps;
    private readonly Stack<(int Task, int Window, int OldStart, int OldEnd)> placed = new();

    /// <summary>An empty shop.</summary>
    internal Bench(ScheduleFacts facts)
    {
        this.facts = facts;
        resources = [.. facts.Capacity.Select(c => new Profile(c))];
        stations = [.. facts.Capacity.Select(_ => new Profile(1))];
        setUps = new StandingSetUps(facts);
        Start = new int[facts.Count];
        Clear();
    }

    /// <summary>By task: where it stands, or none.</summary>
    internal int[] Start { get; }

    /// <summary>How many tasks are placed.</summary>
    internal int Placed => placed.Count;

    /// <summary>All settings that stand.</summary>
    internal IEnumerable<(int SetUp, int Start, int End)> SetUps => setUps.All();

    /// <summary>Takes everything out again.</summary>
    internal void Clear()
    {
        foreach (var profile in resources) profile.Clear();
        foreach (var profile in stations) profile.Clear();
        setUps.Clear();
        placed.Clear();
        Array.Fill(Start, ScheduleFacts.None);
    }

    /// <summary>The first start at which a task fits, or never.</summary>
    /// <param name="task">Number of the task.</param>
    /// <param name="from">Not before this. [min]</param>
    internal int EarliestStart(int task, int from)
    {
        var start = facts.Hours[task] == ScheduleFacts.None ? WithNeeds(task, from) : InWindows(task, from);
        return start + facts.Minutes[task] > facts.LatestEnd[task] ? ScheduleFacts.Never : start;
    }

    /// <summary>Minutes of setting up that a start of a task brings with it; zero where its setting stands in the window already.</summary>
    internal int NewSetUpMinutes(int task, int start)
    {
        var key = facts.SetUp[task];
        return key == ScheduleFacts.None || setUps[key, FindWindow(task, start)] != StandingSetUps.Absent ? 0 : facts.SetUpMinutes(task);
    }

    /// <summary>Puts a task where it fits.</summary>
    internal void Place(int task, int start)
    {
        var end = start + facts.Minutes[task];
        foreach (var need in facts.Needs[task]) resources[need.Resource].Take(start, end + need.Held, need.Amount);
        Start[task] = start;
        if (facts.SetUp[task] == ScheduleFacts.None)
        {
            placed.Push((task, ScheduleFacts.None, 0, 0));
            return;
        }

        var key = facts.SetUp[task];
        var window = FindWindow(task, start);
        var (oldStart, oldEnd) = setUps[key, window];
        placed.Push((task, window, oldStart, oldEnd));
        var setStart = start - facts.SetUps[key].Minutes;
        Replace(key, window, oldStart == ScheduleFacts.None ? (setStart, end) : (Math.Min(oldStart, setStart), Math.Max(oldEnd, end)));
    }

    /// <summary>Takes out the task that was placed last.</summary>
    internal void TakeBack()
    {
        var (task, window, oldStart, oldEnd) = placed.Pop();
        var end = Start[task] + facts.Minutes[task];
        foreach (var need in facts.Needs[task]) resources[need.Resource].Take(Start[task], end + need.Held, -need.Amount);
        Start[task] = ScheduleFacts.None;
        if (window != ScheduleFacts.None) Replace(facts.SetUp[task], window, (oldStart, oldEnd));
    }

    /// <summary>The first window of a task's hours that ends after a time.</summary>
    internal static int FirstWindow(ScheduleWindow[] windows, int after)
    {
        int low = 0, high = windows.Length;
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (windows[middle].End > after) high = middle;
            else low = middle + 1;
        }

        return low;
    }

    private int FindWindow(int task, int start) => FirstWindow(facts.Windows[facts.Hours[task]], start);

    private void Replace(int key, int window, (int Start, int End) now)
    {
        var (station, maker, minutes) = facts.SetUps[key];
        var old = setUps[key, window];
        if (old == now) return;
        if (old != StandingSetUps.Absent)
        {
            stations[station].Take(old.Start, old.End, -1);
            resources[maker].Take(old.Start, old.Start + minutes, -1);
        }

        if (now != StandingSetUps.Absent)
        {
            stations[station].Take(now.Start, now.End, 1);
            resources[maker].Take(now.Start, now.Start + minutes, 1);
        }

        setUps[key, window] = now;
    }

    /// <summary>The first start from a time on at which all that the task needs is free.</summary>
    private int WithNeeds(int task, int from)
    {
        var minutes = facts.Minutes[task];
        var start = from;
        for (var settled = false; !settled;)
        {
            settled = true;
            foreach (var need in facts.Needs[task])
            {
                var fit = resources[need.Resource].EarliestFit(start, minutes + need.Held, need.Amount);
                if (fit == start) continue;
                start = fit;
                settled = false;
            }
        }

        return start;
    }

    private int InWindows(int task, int from)
    {
        var windows = facts.Windows[facts.Hours[task]];
        var minutes = facts.Minutes[task];
        var setUp = facts.SetUp[task];
        for (var w = FirstWindow(windows, minutes == 0 ? from - 1 : from); w < windows.Length; w++)
        {
            var first = Math.Max(from, windows[w].Start + facts.SetUpMinutes(task));
            if (first + minutes > windows[w].End) continue;
            var start = setUp == ScheduleFacts.None ? WithNeeds(task, first)
                : setUps[setUp, w] == StandingSetUps.Absent ? WithNewSetUp(task, first, windows[w].End)
                : WithStandingSetUp(task, first, w, windows[w].End);
            if (start + minutes <= windows[w].End) return start;
            if (setUp == ScheduleFacts.None) w = Math.Max(w, FirstWindow(windows, start) - 1);
        }

        return ScheduleFacts.Never;
    }

    /// <summary>Sets up just before the task.</summary>
    private int WithNewSetUp(int task, int from, int windowEnd)
    {
        var (station, maker, set) = facts.SetUps[facts.SetUp[task]];
        var minutes = facts.Minutes[task];
        for (var start = from; ;)
        {
            var fit = WithNeeds(task, start);
            fit = resources[maker].EarliestFit(fit - set, set, 1) + set;
            fit = stations[station].EarliestFit(fit - set, set + minutes, 1) + set;
            if (fit == start || fit + minutes > windowEnd) return fit;
            start = fit;
        }
    }

    /// <summary>Uses a setting that stands in the window: makes it stand longer, or sets it up earlier.</summary>
    private int WithStandingSetUp(int task, int from, int window, int windowEnd)
    {
        var (station, _, set) = facts.SetUps[facts.SetUp[task]];
        var (start, end) = setUps[facts.SetUp[task], window];
        if (from < start + set)
        {
            var before = WithEarlierSetUp(task, from, windowEnd, (start, end));
            if (before != ScheduleFacts.Never) return before;
        }

        var fit = WithNeeds(task, Math.Max(from, start + set));
        return fit + facts.Minutes[task] <= windowEnd && stations[station].IsFree(end, fit + facts.Minutes[task], 1) ? fit : ScheduleFacts.Never;
    }

    private int WithEarlierSetUp(int task, int from, int windowEnd, (int Start, int End) stands)
    {
        var (station, maker, set) = facts.SetUps[facts.SetUp[task]];
        resources[maker].Take(stands.Start, stands.Start + set, -1);
        var found = ScheduleFacts.Never;
        for (var start = from; start < stands.Start + set;)
        {
            var fit = WithNeeds(task, start);
            fit = resources[maker].EarliestFit(fit - set, set, 1) + set;
            var end = fit + facts.Minutes[task];
            if (fit >= stands.Start + set || end > windowEnd) break;
            if (fit == start && stations[station].IsFree(fit - set, stands.Start, 1) && stations[station].IsFree(stands.End, end, 1))
            {
                found = fit;
                break;
            }

            // The setting stands to the end without a gap, so nothing but a later start can help.
            start = fit == start ? start + Math.Max(1, stations[station].EarliestFit(fit - set, 1, 1) - (fit - set)) : fit;
        }

        resources[maker].Take(stands.Start, stands.Start + set, 1);
        return found;
    }
}
