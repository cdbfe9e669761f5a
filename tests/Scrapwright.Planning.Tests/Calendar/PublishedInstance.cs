using Scrapwright.Core.Calendar;

namespace Scrapwright.Planning.Tests.Calendar;

/// <summary>
/// PSPLIB, j30 set, instance j301_1. R. Kolisch, A. Sprecher: PSPLIB – A project scheduling problem library, European Journal of Operational Research 96 (1997), 205–216. Numbers carried over from the
/// published file: of each job its duration, its needs of R1 to R4, and the jobs that follow.
/// </summary>
internal static class PublishedInstance
{
    private static readonly int[] Capacity = [12, 13, 4, 12];

    private static readonly (int Minutes, int[] Needs, int[] After)[] Jobs =
    [
        (0, [0, 0, 0, 0], [2, 3, 4]),
        (8, [4, 0, 0, 0], [6, 11, 15]),
        (4, [10, 0, 0, 0], [7, 8, 13]),
        (6, [0, 0, 0, 3], [5, 9, 10]),
        (3, [3, 0, 0, 0], [20]),
        (8, [0, 0, 0, 8], [30]),
        (5, [4, 0, 0, 0], [27]),
        (9, [0, 1, 0, 0], [12, 19, 27]),
        (2, [6, 0, 0, 0], [14]),
        (7, [0, 0, 0, 1], [16, 25]),
        (9, [0, 5, 0, 0], [20, 26]),
        (2, [0, 7, 0, 0], [14]),
        (6, [4, 0, 0, 0], [17, 18]),
        (3, [0, 8, 0, 0], [17]),
        (9, [3, 0, 0, 0], [25]),
        (10, [0, 0, 0, 5], [21, 22]),
        (6, [0, 0, 0, 8], [22]),
        (5, [0, 0, 0, 7], [20, 22]),
        (3, [0, 1, 0, 0], [24, 29]),
        (7, [0, 10, 0, 0], [23, 25]),
        (2, [0, 0, 0, 6], [28]),
        (7, [2, 0, 0, 0], [23]),
        (2, [3, 0, 0, 0], [24]),
        (3, [0, 9, 0, 0], [30]),
        (3, [4, 0, 0, 0], [30]),
        (7, [0, 0, 4, 0], [31]),
        (8, [0, 0, 0, 7], [28]),
        (3, [0, 8, 0, 0], [31]),
        (7, [0, 7, 0, 0], [32]),
        (2, [0, 7, 0, 0], [32]),
        (2, [0, 0, 2, 0], [32]),
        (0, [0, 0, 0, 0], []),
    ];

    internal static ScheduleProblem Problem => new()
    {
        HorizonMinutes = 158,
        Resources = [.. Capacity.Select((c, i) => new ScheduleResource($"R{i + 1}", c))],
        Tasks =
        [
            .. Jobs.Select((job, i) => new ScheduleTask
            {
                Id = $"{i + 1}",
                Minutes = job.Minutes,
                Needs = [.. job.Needs.Select((amount, r) => new ScheduleNeed($"R{r + 1}", amount)).Where(n => n.Amount > 0)],
            }),
        ],
        Links = [.. Jobs.SelectMany((job, i) => job.After.Select(after => new ScheduleLink($"{i + 1}", $"{after}")))],
    };
}
