namespace Scrapwright.Core.Calendar.Building;

/// <summary>How much of one resource is taken, as steps over time.</summary>
internal sealed class Profile(int capacity)
{
    private int[] times = new int[16];
    private int[] taken = new int[16];
    private int count = 1;

    /// <summary>Nothing is taken any more.</summary>
    internal void Clear()
    {
        count = 1;
        times[0] = 0;
        taken[0] = 0;
    }

    /// <summary>The first time from which an amount is free for so long.</summary>
    /// <param name="from">Not before this. [min], from zero</param>
    /// <param name="minutes">For so long; for none nothing has to be free. [min]</param>
    /// <param name="amount">At most the capacity.</param>
    internal int EarliestFit(int from, int minutes, int amount)
    {
        if (minutes <= 0) return from;
        var start = from;
        for (var i = Find(from); ; i++)
        {
            var isLast = i == count - 1;
            if (taken[i] + amount > capacity)
            {
                start = times[i + 1];
            }
            else if (isLast || times[i + 1] >= start + minutes)
            {
                return start;
            }
        }
    }

    /// <summary>True when an amount is free from one time to another.</summary>
    internal bool IsFree(int from, int to, int amount) => to <= from || EarliestFit(from, to - from, amount) == from;

    /// <summary>Takes an amount, or gives it back when it is below zero.</summary>
    internal void Take(int from, int to, int amount)
    {
        if (to <= from) return;
        var first = Cut(from);
        var last = Cut(to);
        for (var i = first; i < last; i++) taken[i] += amount;
        if (amount < 0)
        {
            Join(last);
            Join(first);
        }
    }

    /// <summary>The last step that begins at or before a time.</summary>
    private int Find(int time)
    {
        int low = 0, high = count - 1;
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (times[middle] <= time) low = middle;
            else high = middle - 1;
        }

        return low;
    }

    /// <summary>Makes a step begin at a time.</summary>
    private int Cut(int time)
    {
        var at = Find(time);
        if (times[at] == time) return at;
        if (count == times.Length)
        {
            Array.Resize(ref times, count * 2);
            Array.Resize(ref taken, count * 2);
        }

        Array.Copy(times, at + 1, times, at + 2, count - at - 1);
        Array.Copy(taken, at + 1, taken, at + 2, count - at - 1);
        times[at + 1] = time;
        taken[at + 1] = taken[at];
        count++;
        return at + 1;
    }

    /// <summary>Makes one of a step and the one before when they are alike.</summary>
    private void Join(int at)
    {
        if (at == 0 || taken[at] != taken[at - 1]) return;
        Array.Copy(times, at + 1, times, at, count - at - 1);
        Array.Copy(taken, at + 1, taken, at, count - at - 1);
        count--;
    }
}
