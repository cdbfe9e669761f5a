using Scrapwright.Core.Calendar;

namespace Scrapwright.Benchmarks.Scheduling;

/// <summary>
/// An invented workshop: one maker, eight stations with 25 settings, evenings and weekends, clamps that hold on after gluing, and gifts of fifteen tasks each, most on a station's setting. Gifts are for three occasions. Numbers are invented,
/// of a likely size.
/// </summary>
internal static class InventedShop
{
    private const int Day = 24 * 60;

    private static readonly string[] Stations = ["jointer", "planer", "bandsaw", "table-saw", "drill-press", "router", "clamps", "sanding"];

    internal static ScheduleProblem Of(int gifts, int seed, int dueInDays)
    {
        var random = new Random(seed);
        var tasks = new List<ScheduleTask>();
        var links = new List<ScheduleLink>();
        var deliveries = new List<ScheduleDelivery>();
        for (var gift = 1; gift <= gifts; gift++)
        {
            AddGift(random, $"gift {gift:00}", tasks, links);
            deliveries.Add(new ScheduleDelivery($"gift {gift:00}", [new ScheduleLast($"gift {gift:00}, 15", 24 * 60)], dueInDays * Day * (1 + (gift * 3 / (gifts + 1))) / 3, 1 + (gift % 3), (dueInDays * Day * (1 + (gift * 3 / (gifts + 1))) / 3) - (7 * Day)));
        }

        var days = 20 + (gifts * 3);
        return new ScheduleProblem
        {
            HorizonMinutes = days * Day,
            Resources = [new ScheduleResource("maker", 1), .. Stations.Where(s => s != "clamps").Select(s => new ScheduleResource(s, 1)), new ScheduleResource("glue table", 1), new ScheduleResource("clamps", 12)],
            Tasks = [.. tasks],
            Links = [.. links],
            Hours = [Hours("all", days, 18 * 60, 21 * 60), Hours("machines", days, 18 * 60, (20 * 60) + 30)],
            SetUps = [.. Enumerable.Range(0, 25).Select(k => new ScheduleSetUp($"setting {k}", StationOf(k), "maker", 3 + (k * 7 % 10)))],
            Deliveries = [.. deliveries],
        };
    }

    private static string StationOf(int setting) => Stations[setting % 8] == "clamps" ? "glue table" : Stations[setting % 8];

    /// <summary>Five evenings, and longer days at the weekend.</summary>
    private static ScheduleHours Hours(string key, int days, int from, int to) => new(
        key,
        [.. Enumerable.Range(0, days).SelectMany(day => day % 7 < 5
            ? new[] { new ScheduleWindow((day * Day) + from, (day * Day) + to) }
            : [new ScheduleWindow((day * Day) + (9 * 60), (day * Day) + (12 * 60)), new ScheduleWindow((day * Day) + (14 * 60), (day * Day) + to - 60)])]);

    /// <summary>Fifteen tasks: milling, glue-up with clamps held, flattening, cutting, joints, sanding, oil that is wiped off in time.</summary>
    private static void AddGift(Random random, string gift, List<ScheduleTask> tasks, List<ScheduleLink> links)
    {
        int[] stations = [3, 0, 1, 3, 6, 1, 3, 3, 4, 5, 6, 7, 7, -1, -1];
        for (var i = 0; i < stations.Length; i++)
        {
            var id = $"{gift}, {i + 1:00}";
            var setting = stations[i] < 0 ? -1 : stations[i] + (8 * random.Next(3));
            var isGlue = stations[i] == 6;
            var needs = new List<ScheduleNeed> { new("maker", 1) };
            if (stations[i] >= 0) needs.Add(new ScheduleNeed(isGlue ? "glue table" : Stations[stations[i]], 1));
            if (isGlue) needs.Add(new ScheduleNeed("clamps", random.Next(3, 7), 60 + (30 * random.Next(4))));
            tasks.Add(new ScheduleTask
            {
                Id = id,
                Minutes = random.Next(4, 20),
                Needs = [.. needs],
                Hours = stations[i] is >= 0 and < 6 ? "machines" : "all",
                SetUp = setting < 0 ? "" : $"setting {setting}",
            });
            if (i == 0) continue;
            var least = stations[i - 1] == 6 ? 8 * 60 : i == 14 ? 15 : 0;
            links.Add(new ScheduleLink($"{gift}, {i:00}", id, least, i == 14 ? 45 : null));
        }
    }
}
