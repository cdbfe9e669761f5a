using Scrapwright.Core.Calendar;
using Scrapwright.Planning.Calendar;

namespace Scrapwright.Cli.Output;

/// <summary>Says how a search for a calendar goes on: one line for each better one.</summary>
internal sealed class CalendarTicker(Terminal terminal) : IProgress<ScheduleProgress>
{
    private readonly Lock gate = new();
    private string shown = "";

    /// <inheritdoc/>
    public void Report(ScheduleProgress value)
    {
        lock (gate)
        {
            if (value.Best is null) return;
            var line = string.Join("; ", value.Levels.Where(l => l.Value > 0 || l.Kind != ScheduleLevelKind.Slack).Select(CalendarText.Figure));
            if (line == shown) return;
            shown = line;
            terminal.Error.WriteLine($"{value.Elapsed.TotalSeconds,5:0.0} s  {line}");
        }
    }
}
