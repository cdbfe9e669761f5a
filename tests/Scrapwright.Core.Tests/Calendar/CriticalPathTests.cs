using System.Collections.Immutable;
using Scrapwright.Core.Calendar;

namespace Scrapwright.Core.Tests.Calendar;

public sealed class CriticalPathTests
{
    // Hillier and Lieberman, Introduction to Operations Research, chapter on project management: the Reliable Construction Co. project, weeks. From memory; the slacks follow from the printed durations and
    // were worked out again by hand.
    private static readonly (string Id, int Weeks, string After, int Slack)[] Activities =
    [
        ("A", 2, "", 0), ("B", 4, "A", 0), ("C", 10, "B", 0), ("D", 6, "C", 4), ("E", 4, "C", 0), ("F", 5, "E", 0), ("G", 7, "D", 4),
        ("H", 9, "EG", 4), ("I", 7, "C", 2), ("J", 8, "FI", 0), ("K", 4, "J", 1), ("L", 5, "J", 0), ("M", 2, "H", 4), ("N", 6, "KL", 0),
    ];

    [Fact]
    public void The_textbook_project_takes_44_weeks() => Assert.Equal(44, CriticalPath.LengthMinutes(Project()));

    [Fact]
    public void The_textbook_project_has_the_printed_slacks() =>
        Assert.Equal(Activities.Select(a => (a.Id, a.Slack)), CriticalPath.Of(Project()).Select(s => (s.Task, s.SlackMinutes)));

    [Fact]
    public void The_critical_tasks_are_A_B_C_E_F_J_L_N() => Assert.Equal("ABCEFJLN", string.Concat(CriticalPath.Of(Project()).Where(s => s.IsCritical).Select(s => s.Task)));

    [Fact]
    public void Gaps_and_what_waits_at_the_end_count()
    {
        var problem = Project() with { Links = [new ScheduleLink("A", "B", 3)], Deliveries = [new ScheduleDelivery("gift", [new ScheduleLast("C", 20)], null, 1)] };

        var slack = CriticalPath.Of(problem).ToDictionary(s => s.Task);

        Assert.Equal(5, slack["B"].EarlyStart);
        Assert.Equal(30, CriticalPath.LengthMinutes(problem));
        Assert.Equal((0, 10), (slack["C"].EarlyStart, slack["C"].LateEnd));
    }

    [Fact]
    public void A_circle_is_a_mistake_of_the_caller() =>
        Assert.Throws<ArgumentException>(() => CriticalPath.Of(Project() with { Links = [new ScheduleLink("A", "B"), new ScheduleLink("B", "A")] }));

    private static ScheduleProblem Project() => new()
    {
        HorizonMinutes = 100,
        Resources = [],
        Tasks = [.. Activities.Select(a => new ScheduleTask { Id = a.Id, Minutes = a.Weeks })],
        Links = Activities.SelectMany(a => a.After.Select(before => new ScheduleLink($"{before}", a.Id))).ToImmutableArray(),
    };
}
