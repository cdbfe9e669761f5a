namespace Scrapwright.Core.Calendar.Building;

/// <summary>A delivery, with numbers of tasks.</summary>
internal readonly record struct DeliveryFacts((int Task, int Wait)[] Last, int? Due, int? Wanted, int Priority)
{
    /// <summary>When it should be ready for the sake of a level: due for lateness, wanted for slack; null where the level does not look at it. [min]</summary>
    internal int? By(ScheduleLevelKind kind) => kind switch
    {
        ScheduleLevelKind.Lateness => Due,
        ScheduleLevelKind.Slack => Wanted,
        _ => null,
    };
}
