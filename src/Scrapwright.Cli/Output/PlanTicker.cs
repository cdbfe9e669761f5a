using Scrapwright.Core.Plans;
using Scrapwright.Planning;
using Spectre.Console;

namespace Scrapwright.Cli.Output;

/// <summary>Shows how a search goes on: a table that is drawn over on a terminal, one line for each better plan elsewhere.</summary>
internal sealed class PlanTicker : IProgress<PlanProgress>
{
    private static readonly TimeSpan Beat = TimeSpan.FromMilliseconds(250);

    private readonly Terminal terminal;
    private readonly Lock gate = new();
    private PlanProgress? latest;
    private Plan? best;
    private string shown = "";

    internal PlanTicker(Terminal terminal) => this.terminal = terminal;

    /// <inheritdoc/>
    public void Report(PlanProgress value)
    {
        lock (gate)
        {
            latest = value;
            best = value.Best ?? best;
            if (terminal.IsLive || value.Best is not { } plan || Line(plan) is not { } line || line == shown) return;
            shown = line;
            terminal.Error.WriteLine($"{value.Elapsed.TotalSeconds,5:0.0} s  {line}");
        }
    }

    /// <summary>Shows the search until it ends.</summary>
    internal async Task<PlanOutcome> ShowAsync(Task<PlanOutcome> search, double seconds)
    {
        if (!terminal.IsLive) return await search;
        await terminal.Console.Live(Draw(TimeSpan.Zero, seconds)).AutoClear(true).StartAsync(async live =>
        {
            var clock = System.Diagnostics.Stopwatch.StartNew();
            while (!search.IsCompleted)
            {
                await Task.WhenAny(search, Task.Delay(Beat));
                live.UpdateTarget(Draw(clock.Elapsed, seconds));
                live.Refresh();
            }
        });
        return await search;
    }

    private static string Line(Plan plan) => string.Join("; ", plan.Levels.Select(level => $"{LevelText.Title(level.Kind)} {LevelText.Figure(level, plan)}"));

    private Rows Draw(TimeSpan elapsed, double seconds)
    {
        lock (gate)
        {
            var table = new Table().Border(TableBorder.Simple).AddColumn("").AddColumn("Best so far").AddColumn("");
            if (latest is { } progress && best is { } plan)
            {
                foreach (var level in progress.Levels)
                {
                    table.AddRow(
                        new Text(LevelText.Title(level.Kind)), new Text(LevelText.Figure(level, plan), Style.Parse("bold")), new Text(LevelText.Verdict(level, plan)));
                }
            }

            return new Rows(
                new Text($"{latest?.Phase ?? "Looking at the pile"}, {elapsed.TotalSeconds:0} of at most {seconds:0} s. Ctrl+C ends the search and keeps the best plan."), table);
        }
    }
}
