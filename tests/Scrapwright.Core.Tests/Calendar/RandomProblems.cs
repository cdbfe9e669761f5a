using System.Collections.Immutable;
using Scrapwright.Core.Calendar;

namespace Scrapwright.Core.Tests.Calendar;

/// <summary>Small and middling problems in which every rule occurs; the same seed gives the same problem.</summary>
internal static class RandomProblems
{
    private static readonly ImmutableArray<ScheduleResource> Resources = [new("maker", 1), new("saw", 1), new("clamps", 3)];

    /// <summary>So few tasks and minutes that everything can be tried.</summary>
    internal static ScheduleProblem Tiny(int seed)
    {
        var random = new Random(seed);
        return Of(random, random.Next(2, 5), 17, 3, [new ScheduleWindow(0, 7), new ScheduleWindow(9, 16)], [new ScheduleWindow(1, 6), new ScheduleWindow(9, 15)]);
    }

    /// <summary>A week or two of evenings.</summary>
    internal static ScheduleProblem Middling(int seed)
    {
        var random = new Random(seed);
        ImmutableArray<ScheduleWindow> all = [.. Enumerable.Range(0, 20).Select(day => new ScheduleWindow(day * 1440, (day * 1440) + 180))];
        return Of(random, random.Next(15, 40), 20 * 1440, 25, all, [.. all.Select(w => new ScheduleWindow(w.Start + 20, w.End - 10))]);
    }

    private static ScheduleProblem Of(Random random, int count, int horizon, int longest, ImmutableArray<ScheduleWindow> all, ImmutableArray<ScheduleWindow> machines)
    {
        ImmutableArray<ScheduleTask> tasks = [.. Enumerable.Range(0, count).Select(i => Task(random, i, longest))];
        if (random.Next(4) == 0)
        {
            var at = random.Next(count);
            var free = tasks[at];
            var window = free.Hours == "machines" ? machines[^1] : all[^1];
            tasks = tasks.SetItem(at, free with { EarliestStart = 0, FixedStart = window.Start + (free.SetUp.Length > 0 ? Math.Max(1, longest / 5) : 0) });
        }

        var step = random.Next(3) == 0 ? 5 : 1;
        return new ScheduleProblem
        {
            HorizonMinutes = horizon,
            Resources = Resources,
            Tasks = tasks,
            Links = [.. Links(random, count, longest)],
            Hours = [new ScheduleHours("all", all), new ScheduleHours("machines", machines)],
            SetUps = [new ScheduleSetUp("rip", "saw", "maker", 1), new ScheduleSetUp("crosscut", "saw", "maker", Math.Max(1, longest / 5))],
            Deliveries = [.. Deliveries(random, count, horizon)],
            Before = random.Next(3) == 0 ? [new ScheduledTask("T0", 2, 3), new ScheduledTask("gone", 1, 2), new ScheduledTask("T1", 10, 12)] : [],
            SetUpMinutesBefore = random.Next(4) == 0 ? random.Next(Math.Max(2, longest)) : null,
            ReadyStepMinutes = step,
            ReadyOffsetMinutes = random.Next(step),
        };
    }

    private static ScheduleTask Task(Random random, int number, int longest)
    {
        var kind = random.Next(6);
        var task = new ScheduleTask { Id = $"T{number}", Minutes = random.Next(1, longest + 1), EarliestStart = random.Next(5) == 0 ? random.Next(4) : 0 };
        return kind switch
        {
            0 => task with { Minutes = random.Next(0, longest), Hours = "all", Needs = [new ScheduleNeed("maker", 1)] },
            1 => task with { Needs = [new ScheduleNeed("clamps", 2)] },
            2 => task with { Hours = "all", Needs = [new ScheduleNeed("maker", 1), new ScheduleNeed("clamps", random.Next(1, 4), random.Next(0, longest * 2))] },
            3 => task with { Hours = "machines", SetUp = "rip", Needs = [new ScheduleNeed("maker", 1)] },
            4 => task with { Hours = "machines", SetUp = "crosscut", Needs = [new ScheduleNeed("maker", 1), new ScheduleNeed("saw", 1)] },
            _ => task with { Hours = "machines", SetUp = "rip" },
        };
    }

    private static IEnumerable<ScheduleLink> Links(Random random, int count, int longest)
    {
        for (var after = 1; after < count; after++)
        {
            if (random.Next(2) == 0) continue;
            var least = random.Next(longest);
            yield return new ScheduleLink($"T{random.Next(after)}", $"T{after}", least, random.Next(3) == 0 ? least + random.Next(longest) : null);
        }
    }

    private static IEnumerable<ScheduleDelivery> Deliveries(Random random, int count, int horizon)
    {
        for (var i = 0; i < random.Next(3); i++)
        {
            yield return new ScheduleDelivery($"gift {i}", [new ScheduleLast($"T{random.Next(count)}", random.Next(3))], random.Next(3) == 0 ? null : random.Next(horizon / 2), random.Next(1, 3), random.Next(3) == 0 ? null : random.Next(-horizon / 4, horizon / 2));
        }
    }
}
