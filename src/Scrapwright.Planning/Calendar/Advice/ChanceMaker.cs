using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Planning.Calendar.Advice;

/// <summary>Works out the chances of one calendar.</summary>
internal sealed class ChanceMaker
{
    private readonly WorkCalendar calendar;
    private readonly ChanceRules rules;
    private readonly CancellationToken cancellationToken;
    private readonly ScheduleDelivery[] deliveries;
    private readonly WorkRuns runs;
    private readonly ShopEvenings evenings;

    internal ChanceMaker(WorkCalendar calendar, ChanceRules rules, CancellationToken cancellationToken)
    {
        (this.calendar, this.rules, this.cancellationToken) = (calendar, rules, cancellationToken);
        deliveries = [.. calendar.Problem.Deliveries];
        runs = new(calendar.Problem, calendar.Schedule, calendar.Tasks.ToDictionary(t => t.Task.Id, t => t.Task, StringComparer.Ordinal), rules);
        evenings = new(calendar);
    }

    internal CalendarChance Make()
    {
        var ready = Simulated();
        var all = Enumerable.Range(0, rules.Runs).Select(run => ready.Select(r => r[run]).DefaultIfEmpty(0).Max()).ToArray();
        var inTime = Enumerable.Range(0, rules.Runs).Count(run => deliveries.Index().All(d => ready[d.Index][run] <= (d.Item.Due ?? int.MaxValue)));
        var ends = calendar.Schedule.Tasks.ToDictionary(t => t.Task, t => t.End, StringComparer.Ordinal);
        int[] planned = [.. deliveries.Select(d => d.Last.Max(l => ends[l.Task] + l.WaitMinutes))];
        int? lastDue = deliveries.Select(d => d.Due).Max();
        return new()
        {
            Runs = rules.Runs,
            AskedPerMille = rules.AskedPerMille,
            Gifts = [.. deliveries.Select((d, i) => Chance(d.Id, calendar.Gifts.FirstOrDefault(g => g.Gift == d.Id)?.Due, d.Due, ready[i].Count(r => r <= d.Due), ready[i], planned[i], [i]))],
            All = Chance("", calendar.Gifts.Max(g => g.Due), lastDue, inTime, all, planned.DefaultIfEmpty(0).Max(), [.. Enumerable.Range(0, deliveries.Length)]),
        };
    }

    private int[][] Simulated()
    {
        var ready = deliveries.Select(_ => new int[rules.Runs]).ToArray();
        for (var run = 0; run < rules.Runs; run++)
        {
            cancellationToken.ThrowIfCancellationRequested();
            runs.Run(run);
            for (var i = 0; i < ready.Length; i++) ready[i][run] = runs.Ready[i];
        }

        return ready;
    }

    private ReadyChance Chance(string gift, DateOnly? day, int? due, int inTime, int[] ready, int planned, int[] which)
    {
        var asked = Asked(ready);
        var held = which.SelectMany(runs.TasksOf).ToHashSet();
        int? start = due is null ? null : LastStart(which, held);
        int? safe = start is { } last ? LastSafeStart(last, which, held) : null;
        return new()
        {
            Gift = gift,
            Due = day,
            PerMille = due is null ? null : (int)(1000L * inTime / rules.Runs),
            ReadyBy = asked < ScheduleFacts.Never ? evenings.DayAfter(asked) : null,
            StartBy = start is { } s ? evenings.At(evenings.All[s].Start) : null,
            SafeStartBy = safe is { } e ? evenings.At(evenings.All[e].Start) : null,
            EveningsToKeepFree = asked < ScheduleFacts.Never ? evenings.Between(planned, asked) : null,
            EveningsLeft = due is { } d ? evenings.Between(planned, d) : null,
        };
    }

    // The smallest that as many as asked for do not pass.
    private int Asked(int[] ready)
    {
        int[] sorted = [.. ready.Order()];
        return sorted[(int)(((((long)rules.AskedPerMille * sorted.Length) + 999) / 1000) - 1)];
    }

    /// <summary>The last window, by halving, in which the first task of some deliveries can start with the planned minutes; null when none is early enough.</summary>
    private int? LastStart(int[] which, HashSet<int> held)
    {
        // The date itself is no evening to start in.
        var due = which.Select(i => deliveries[i].Due).Max() ?? 0;
        var (low, high) = (-1, Array.FindLastIndex(evenings.All, w => w.Start < due));
        while (low < high)
        {
            cancellationToken.ThrowIfCancellationRequested();
            var middle = (low + high + 1) / 2;
            if (KeepsDates(which, held, evenings.All[middle].Start)) low = middle;
            else high = middle - 1;
        }

        return low >= 0 ? low : null;
    }

    /// <summary>The same as often as asked for. It lies near the one for planned minutes, so windows are tried from there backwards: most fail after a few runs.</summary>
    private int? LastSafeStart(int latest, int[] which, HashSet<int> held)
    {
        for (var window = latest; window >= 0; window--)
        {
            if (KeepsDatesOften(which, held, evenings.All[window].Start)) return window;
        }

        return null;
    }

    private bool KeepsDates(int[] which, HashSet<int> held, int until)
    {
        runs.Run(WorkRuns.AsPlanned, held, until);
        return AreInTime(which);
    }

    private bool KeepsDatesOften(int[] which, HashSet<int> held, int until)
    {
        var count = Math.Min(rules.StartRuns, rules.Runs);
        var late = count - (int)((((long)rules.AskedPerMille * count) + 999) / 1000);
        for (var run = 0; run < count; run++)
        {
            cancellationToken.ThrowIfCancellationRequested();
            runs.Run(run, held, until);
            if (!AreInTime(which) && --late < 0) return false;
        }

        return true;
    }

    private bool AreInTime(int[] which) => which.All(i => deliveries[i].Due is not { } due || runs.Ready[i] <= due);
}
