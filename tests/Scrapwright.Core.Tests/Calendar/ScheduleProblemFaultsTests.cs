using Scrapwright.Core.Calendar;

namespace Scrapwright.Core.Tests.Calendar;

public sealed class ScheduleProblemFaultsTests
{
    private static ScheduleProblem Shop => EveningShop.Problem;

    [Fact]
    public void A_sound_problem_has_none() => Assert.Empty(ScheduleProblemFaults.Find(Shop));

    [Fact]
    public void A_problem_without_tasks_has_none() => Assert.Empty(ScheduleProblemFaults.Find(new ScheduleProblem { HorizonMinutes = 1, Resources = [], Tasks = [] }));

    public static TheoryData<string, string> Faults => new()
    {
        { "two tasks of a name", "rip" },
        { "two resources of a name", "saw" },
        { "two needs of one resource", "maker" },
        { "unknown resource", "glue" },
        { "unknown hours", "glue" },
        { "unknown setting", "glue" },
        { "unknown task in a link", "link rip to sand" },
        { "unknown task in a delivery", "stand" },
        { "no horizon", "horizon" },
        { "negative minutes", "rip" },
        { "negative gap", "link oil to wipe" },
        { "most below least", "link oil to wipe" },
        { "need above capacity", "glue" },
        { "windows that overlap", "evenings" },
        { "a setting with two hours", "rip fence" },
        { "a setting without hours", "rip fence" },
        { "priority 0", "stand" },
        { "circle", "glue" },
        { "fixed out of hours", "glue more" },
        { "fixed before its set-up fits", "rip" },
        { "fixed before the earliest start", "rip" },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_says_where(string fault, string where) => Assert.Contains(ScheduleProblemFaults.Find(With(fault)), reason => reason.Where == where);

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_makes_it_impossible_not_an_exception(string fault, string where)
    {
        var outcome = Assert.IsType<ScheduleOutcome.Impossible>(ScheduleBuilder.Build(With(fault)));

        Assert.Contains(outcome.Reasons, reason => reason.Where == where);
    }

    private static ScheduleProblem With(string fault) => fault switch
    {
        "two tasks of a name" => Shop with { Tasks = Shop.Tasks.Add(Shop.Tasks[0]) },
        "two resources of a name" => Shop with { Resources = Shop.Resources.Add(Shop.Resources[1]) },
        "two needs of one resource" => Task("glue", t => t with { Needs = [new ScheduleNeed("maker", 1), new ScheduleNeed("maker", 1)] }),
        "unknown resource" => Task("glue", t => t with { Needs = [new ScheduleNeed("oven", 1)] }),
        "unknown hours" => Task("glue", t => t with { Hours = "mornings" }),
        "unknown setting" => Task("glue", t => t with { SetUp = "sled" }),
        "unknown task in a link" => Shop with { Links = [new ScheduleLink("rip", "sand")] },
        "unknown task in a delivery" => Shop with { Deliveries = [new ScheduleDelivery("stand", [new ScheduleLast("sand")], 5, 1)] },
        "no horizon" => Shop with { HorizonMinutes = 0 },
        "negative minutes" => Task("rip", t => t with { Minutes = -1 }),
        "negative gap" => Shop with { Links = [new ScheduleLink("oil", "wipe", -1)] },
        "most below least" => Shop with { Links = [new ScheduleLink("oil", "wipe", 5, 4)] },
        "need above capacity" => Task("glue", t => t with { Needs = [new ScheduleNeed("clamps", 3)] }),
        "windows that overlap" => Shop with { Hours = [new ScheduleHours("evenings", [new ScheduleWindow(0, 120), new ScheduleWindow(119, 1600)])] },
        "a setting with two hours" => Task("rip", t => t with { Hours = "days" }) with { Hours = Shop.Hours.Add(new ScheduleHours("days", [new ScheduleWindow(0, 600)])) },
        "a setting without hours" => Shop with { Tasks = [.. Shop.Tasks.Select(t => t.SetUp == "rip fence" ? t with { Hours = "" } : t)] },
        "priority 0" => Shop with { Deliveries = [Shop.Deliveries[0] with { Priority = 0 }] },
        "circle" => Shop with { Links = Shop.Links.Add(new ScheduleLink("wipe", "glue")) },
        "fixed out of hours" => Task("glue more", t => t with { FixedStart = 1590 }),
        "fixed before its set-up fits" => Task("rip", t => t with { FixedStart = 1444 }),
        _ => Task("rip", t => t with { FixedStart = 4 }),
    };

    private static ScheduleProblem Task(string id, Func<ScheduleTask, ScheduleTask> change) => Shop with { Tasks = [.. Shop.Tasks.Select(t => t.Id == id ? change(t) : t)] };
}
