namespace Scrapwright.Core.Calendar.Building;

/// <summary>How many minutes of some windows have passed at a time.</summary>
internal sealed class OpenMinutes
{
    private readonly ScheduleWindow[] windows;
    private readonly long[] before;

    /// <summary>Adds up windows.</summary>
    /// <param name="windows">In order of time, apart from each other.</param>
    internal OpenMinutes(ScheduleWindow[] windows)
    {
        this.windows = windows;
        before = new long[windows.Length + 1];
        for (var w = 0; w < windows.Length; w++) before[w + 1] = before[w] + windows[w].Minutes;
    }

    /// <summary>Open minutes before a time.</summary>
    internal long Before(int time)
    {
        var w = Bench.FirstWindow(windows, time);
        return before[w] + (w < windows.Length ? Math.Max(0, time - windows[w].Start) : 0);
    }

    /// <summary>The start of the window a time lies in; the time itself outside.</summary>
    internal int StartOfWindow(int time)
    {
        var w = Bench.FirstWindow(windows, time);
        return w < windows.Length ? Math.Min(time, windows[w].Start) : time;
    }
}
