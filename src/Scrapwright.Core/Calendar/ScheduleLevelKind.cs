namespace Scrapwright.Core.Calendar;

/// <summary>What counts in a schedule, in this order.</summary>
public enum ScheduleLevelKind
{
    /// <summary>Hours that deliveries are late, each begun hour counted, weighted so that any lateness of a lower priority number outweighs all of the higher numbers.</summary>
    Lateness,

    /// <summary>Minutes until the last delivery is ready, or the last task over where that is later. [min]</summary>
    AllReady,

    /// <summary>Minutes spent on setting up. [min]</summary>
    SetUps,

    /// <summary>Tasks that start at another time than in the calendar before.</summary>
    Moved,
}
