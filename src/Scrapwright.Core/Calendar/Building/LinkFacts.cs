namespace Scrapwright.Core.Calendar.Building;

/// <summary>A link, with numbers of tasks; most is never where there is no limit.</summary>
internal readonly record struct LinkFacts(int Before, int After, int Least, int Most)
{
    /// <summary>True when the gap has a limit.</summary>
    internal bool HasMost => Most < ScheduleFacts.Never;
}
