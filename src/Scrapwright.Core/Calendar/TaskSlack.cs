namespace Scrapwright.Core.Calendar;

/// <summary>How much room a task has when nothing but links is looked at.</summary>
/// <param name="Task">Id of the task.</param>
/// <param name="EarlyStart">It cannot start before. [min]</param>
/// <param name="EarlyEnd">It cannot be over before. [min]</param>
/// <param name="LateStart">Starting later makes the whole later. [min]</param>
/// <param name="LateEnd">Being over later makes the whole later. [min]</param>
public sealed record TaskSlack(string Task, int EarlyStart, int EarlyEnd, int LateStart, int LateEnd)
{
    /// <summary>How much later it may start without making the whole later. [min]</summary>
    public int SlackMinutes => LateStart - EarlyStart;

    /// <summary>True when every minute it is later makes the whole later.</summary>
    public bool IsCritical => SlackMinutes == 0;
}
