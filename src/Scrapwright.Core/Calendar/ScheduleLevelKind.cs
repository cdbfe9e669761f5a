namespace Scrapwright.Core.Calendar;

/// <summary>What counts in a schedule, in this order.</summary>
public enum ScheduleLevelKind
{
    /// <summary>
    /// Hours that deliveries of one priority are late, each begun hour counted. One level for each priority that has a date, lower numbers first, so any lateness of a lower number outweighs all of the higher
    /// numbers.
    /// </summary>
    Lateness,

    /// <summary>Minutes until the last delivery is ready, or the last task over where that is later, up to a whole step of the problem. [min]</summary>
    AllReady,

    /// <summary>
    /// Days that deliveries of one priority lack of the slack they should have, each begun day counted. One level for each priority in which slack is wanted, lower numbers first. Days, so that settings still have
    /// room: our own choice.
    /// </summary>
    Slack,

    /// <summary>Minutes spent on setting up beyond those of the calendar before; there where these are known. [min]</summary>
    MoreSetUps,

    /// <summary>Minutes spent on setting up; there where the problem has settings, and last of all where those of the calendar before are known. [min]</summary>
    SetUps,

    /// <summary>Tasks that lie in another window than in the calendar before, or start at another minute where they have no hours; there where there was one.</summary>
    Moved,
}
