using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Sheets;

/// <summary>The sheets of a calendar for the shop's wall: one or more for each week in which something is done, with a box to tick for every task and room for a pencil.</summary>
public static class WeekSheets
{
    private const double TickMm = 7;
    private const double ClockMm = 15;
    private const double PlannedMm = 17;
    private const double PlannedAndUsualMm = 33;
    private const double TookMm = 22;

    /// <summary>The sheets, week by week from Monday to Sunday (ISO 8601); none when nothing is left to do.</summary>
    /// <param name="calendar">The calendar.</param>
    /// <param name="plan">The plan whose work it is.</param>
    /// <param name="paper">The paper.</param>
    public static ImmutableArray<Sheet> For(WorkCalendar calendar, Plan plan, PaperSize paper)
    {
        ArgumentNullException.ThrowIfNull(calendar);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(paper);
        var facts = new PlanFacts(plan, plan.Request.DeriveDesigns());
        var flow = new PageFlow(paper, facts);
        foreach (var week in calendar.Evenings.GroupBy(e => Monday(e.Start)).OrderBy(w => w.Key)) Add(flow, facts, calendar, week.Key, [.. week]);
        return flow.NextPage == 1 ? [] : flow.Sheets();
    }

    private static void Add(PageFlow flow, PlanFacts facts, WorkCalendar calendar, DateOnly monday, CalendarEvening[] evenings)
    {
        var blocks = new List<Block>();
        if (flow.NextPage == 1) blocks.AddRange(ToBuy(facts, calendar, flow.WidthMm));
        foreach (var evening in evenings) blocks.AddRange(Evening(facts, calendar, evening, flow.WidthMm));
        var ready = calendar.Gifts.Where(g => g.ReadyAt is { } at && Monday(at) == monday).Select(g => $"{g.Gift} ({g.ReadyAt!.Value.ToString("dddd", CultureInfo.InvariantCulture)})").ToArray();
        if (ready.Length > 0) blocks.Add(Block.Paragraph($"Ready this week: {string.Join(", ", ready)}.", flow.WidthMm, 11, bold: true));
        var tasks = evenings.Sum(e => e.Tasks.Length);
        flow.Add(
            $"Week of {Text(monday, "d MMMM yyyy")}", $"{OverviewPages.Count(evenings.Length, "evening")}, {OverviewPages.Count(tasks, "task")}; write down what each took",
            $"What to do in the week of {Text(monday, "d MMMM yyyy")}, evening by evening.", blocks);
    }

    // What no task needs any more is bought already.
    private static IEnumerable<Block> ToBuy(PlanFacts facts, WorkCalendar calendar, double width)
    {
        BuyBy[] buys = [.. calendar.BuyBy().Where(b => b.Before is not null)];
        if (buys.Length == 0) yield break;
        yield return Block.Heading("To buy", width) with { WithNext = true };
        foreach (var buy in buys)
            yield return Block.Tick($"{OverviewPages.Item(facts, buy.Item)}: before {buy.Before!.Value.ToString("dddd d MMMM", CultureInfo.InvariantCulture)}", width, 10.5);
        yield return Block.Space(3);
    }

    private static IEnumerable<Block> Evening(PlanFacts facts, WorkCalendar calendar, CalendarEvening evening, double width)
    {
        var tonight = Tonight.Of(calendar, evening);
        var title = $"{evening.Start.ToString("dddd d MMMM", CultureInfo.InvariantCulture)}, {Clock(evening.Start)} to {Clock(evening.End)}";
        yield return Block.Heading(title, width);
        var lines = WorkLines.Of(calendar, evening);
        // A reading is compared with the usual minutes: where the maker's own pace is in the plan, they stand beside it.
        var plannedMm = lines.Any(l => l.UsualMinutes != l.Minutes) ? PlannedAndUsualMm : PlannedMm;
        var table = new Table(facts.Hatches, Table.Fit(width, 2, new Column("", TickMm), new("From", ClockMm), new("What", 60), new("Planned", plannedMm, true), new("Took", TookMm)));
        foreach (var line in lines)
        {
            var (clock, planned) = (new Cell(Clock(line.Start), 10), Planned(line));
            if (line.IsSetUp) table.Row([Cell.None, clock, new($"Set up · {line.Title}", 10), Cell.None, Cell.None], 6.8, withNext: true);
            else table.Row([Cell.Tick, clock, new(line.Title, 10, true), new(planned, 9), Cell.Pencil], 6.8);
        }

        foreach (var block in table.Blocks()) yield return block.Again is { } head ? block with { Again = Block.Above(Block.Heading($"{title} (continued)", width, 11), head) } : block;
        yield return Block.Space(2);
        if (!tonight.StillDrying.IsEmpty) yield return Block.Paragraph($"Still dries when you come: {Alone(tonight.StillDrying)}.", width, 9);
        if (!tonight.Overnight.IsEmpty) yield return Block.Paragraph($"Leave alone: {Alone(tonight.Overnight)}.", width, 9, bold: true);
        yield return Block.Space(3);
    }

    private static string Planned(WorkLine line) => line.UsualMinutes == line.Minutes ? $"{line.Minutes} min" : $"{line.Minutes} (usual {line.UsualMinutes}) min";

    // What is free at one moment stands together; of a title what comes before the colon is enough here.
    private static string Alone(ImmutableArray<CalendarTask> tasks) => string.Join("; ", tasks.GroupBy(t => t.FreeAgain).OrderBy(g => g.Key).Select(g =>
        $"{string.Join(", ", g.Select(t => t.Task.Title.Split(':')[0]).Distinct())} until {g.Key.ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture)}"));

    // Definition: DayOfWeek counts from Sunday, a week from Monday.
    private static DateOnly Monday(DateTimeOffset moment) => DateOnly.FromDateTime(moment.DateTime).AddDays(-(((int)moment.DayOfWeek + 6) % 7));

    private static string Clock(DateTimeOffset moment) => moment.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Text(DateOnly day, string form) => day.ToString(form, CultureInfo.InvariantCulture);
}
