using Scrapwright.Core.Calendar;

namespace Scrapwright.Core.Tests.Calendar;

/// <summary>Two evenings in a garden shed: rip, crosscut, glue, oil and wipe, with a schedule by hand in which every rule is at work.</summary>
internal static class EveningShop
{
    internal static ScheduleProblem Problem => new()
    {
        HorizonMinutes = 3000,
        Resources = [new ScheduleResource("maker", 1), new ScheduleResource("saw", 1), new ScheduleResource("clamps", 2)],
        Tasks =
        [
            new ScheduleTask { Id = "rip", Minutes = 20, Hours = "evenings", SetUp = "rip fence", Needs = [new ScheduleNeed("maker", 1), new ScheduleNeed("saw", 1)], EarliestStart = 5 },
            new ScheduleTask { Id = "rip more", Minutes = 10, Hours = "evenings", SetUp = "rip fence", Needs = [new ScheduleNeed("maker", 1), new ScheduleNeed("saw", 1)] },
            new ScheduleTask { Id = "crosscut", Minutes = 15, Hours = "evenings", SetUp = "crosscut sled", Needs = [new ScheduleNeed("maker", 1), new ScheduleNeed("saw", 1)] },
            new ScheduleTask { Id = "glue", Minutes = 20, Hours = "evenings", Needs = [new ScheduleNeed("maker", 1), new ScheduleNeed("clamps", 2, 60)] },
            new ScheduleTask { Id = "glue more", Minutes = 20, Hours = "evenings", Needs = [new ScheduleNeed("maker", 1), new ScheduleNeed("clamps", 1, 60)], FixedStart = 1500 },
            new ScheduleTask { Id = "oil", Minutes = 10, Hours = "evenings", Needs = [new ScheduleNeed("maker", 1)] },
            new ScheduleTask { Id = "wipe", Minutes = 5, Hours = "evenings", Needs = [new ScheduleNeed("maker", 1)] },
        ],
        Links =
        [
            new ScheduleLink("rip", "glue"), new ScheduleLink("rip more", "glue more"), new ScheduleLink("rip", "crosscut"), new ScheduleLink("glue", "oil", 480), new ScheduleLink("oil", "wipe", 15, 30),
        ],
        Hours = [new ScheduleHours("evenings", [new ScheduleWindow(0, 120), new ScheduleWindow(1440, 1600)])],
        SetUps = [new ScheduleSetUp("rip fence", "saw", "maker", 5), new ScheduleSetUp("crosscut sled", "saw", "maker", 8)],
        Deliveries = [new ScheduleDelivery("stand", [new ScheduleLast("wipe", 720)], 2000, 1, 700), new ScheduleDelivery("tray", [new ScheduleLast("glue more")], 1600, 2)],
        Before = [new ScheduledTask("oil", 1440, 1450), new ScheduledTask("wipe", 115, 120), new ScheduledTask("gone", 0, 1)],
    };

    // By hand: rip fence stands 0 to 35, sled 35 to 58, clamps held from 60 to 140, oil and wipe on the second evening. Ready at 1480 + 720 = 2200, 200 minutes late: four begun hours. Wanted by 700, 1500 minutes before: two begun days.
    internal static Schedule Schedule => new()
    {
        Tasks =
        [
            new ScheduledTask("rip", 5, 25), new ScheduledTask("rip more", 25, 35), new ScheduledTask("crosscut", 43, 58), new ScheduledTask("glue", 60, 80), new ScheduledTask("glue more", 1500, 1520),
            new ScheduledTask("oil", 1440, 1450), new ScheduledTask("wipe", 1475, 1480),
        ],
        SetUps = [new ScheduledSetUp("rip fence", 0, 35), new ScheduledSetUp("crosscut sled", 35, 58)],
        Levels =
        [
            new ScheduleLevel(ScheduleLevelKind.Lateness, 4, 3, 1), new ScheduleLevel(ScheduleLevelKind.Lateness, 0, 0, 2), new ScheduleLevel(ScheduleLevelKind.AllReady, 2200, 2190),
            new ScheduleLevel(ScheduleLevelKind.Slack, 2, 1, 1), new ScheduleLevel(ScheduleLevelKind.SetUps, 13, 13), new ScheduleLevel(ScheduleLevelKind.Moved, 1, 0),
        ],
    };
}
