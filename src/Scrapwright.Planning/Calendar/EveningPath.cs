using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Planning.Calendar;

/// <summary>In which order groups of tasks are placed, and how many of them before each evening.</summary>
internal sealed record EveningPath(int[] Groups, int[] Before)
{
    /// <summary>The path of a placement.</summary>
    /// <param name="placement">All tasks.</param>
    /// <param name="groups">What is placed together.</param>
    /// <param name="evenings">When each evening begins. [min]</param>
    internal static EveningPath Of(PlacedTasks placement, TaskGroups groups, int[] evenings)
    {
        int[] starts = [.. groups.Members.Select(members => members.Min(task => placement.Start[task]))];
        int[] order = [.. Enumerable.Range(0, starts.Length).OrderBy(group => starts[group])];
        var last = starts.DefaultIfEmpty(0).Max();
        return new EveningPath(order, [.. evenings.TakeWhile(evening => evening <= last).Select(evening => order.TakeWhile(group => starts[group] < evening).Count())]);
    }
}
