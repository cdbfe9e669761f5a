using System.Collections.Immutable;
using Scrapwright.Client.Api;
using Scrapwright.Core.Calendar;

namespace Scrapwright.Web.Calendar;

/// <summary>What marks in a calendar must be to be kept, told by field.</summary>
internal static class MarkChecks
{
    // Clocks of a phone and a server differ, never by so much.
    private static readonly TimeSpan Ahead = TimeSpan.FromHours(1);

    /// <summary>Every mark that is wrong. One that is kept already may be of a task that is gone since; only new ones must mean something.</summary>
    internal static ImmutableArray<FieldProblem> Of(CalendarMarks marks, CalendarMarks kept, WorkCalendar? calendar, ShopClock? clock, DateTimeOffset now)
    {
        var problems = ImmutableArray.CreateBuilder<FieldProblem>();
        var known = (calendar?.Tasks.Select(t => t.Task.Id) ?? []).ToHashSet(StringComparer.Ordinal);
        Check("done", [.. marks.Done.Select(d => d.Task)], [.. known, .. kept.Done.Select(d => d.Task)]);
        Check("pinned", [.. marks.Pinned.Select(p => p.Task)], [.. known, .. kept.Pinned.Select(p => p.Task)]);
        foreach (var (i, done) in marks.Done.Index())
        {
            if (done.End > now + Ahead) problems.Add(new($"done[{i}].end", $"{done.End:yyyy-MM-dd HH:mm zzz}", "a moment that is over"));
        }

        foreach (var (i, pin) in marks.Pinned.Index())
        {
            if (calendar is null || clock is null || !known.Contains(pin.Task) || kept.Pinned.Contains(pin)) continue;
            if (CalendarMoves.Move(calendar, clock, [pin.Task], clock.MinuteOf(pin.Start)) is CalendarOutcome.Impossible { Reasons: [var reason, ..] })
                problems.Add(new($"pinned[{i}].start", $"{pin.Start:yyyy-MM-dd HH:mm zzz}: {reason.Where}: {reason.Found}", reason.Expected));
        }

        return problems.ToImmutable();

        void Check(string field, ImmutableArray<string> tasks, HashSet<string> may)
        {
            foreach (var (i, task) in tasks.Index())
            {
                if (!may.Contains(task)) problems.Add(new($"{field}[{i}].task", task, "a task of the latest calendar"));
                else if (tasks[..i].Contains(task)) problems.Add(new($"{field}[{i}].task", task, "each task once"));
            }
        }
    }
}
