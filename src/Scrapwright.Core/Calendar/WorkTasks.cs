using System.Collections.Immutable;
using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Calendar;

/// <summary>The work of a plan: what is to be done, and what has to wait for what.</summary>
public sealed record WorkTasks
{
    /// <summary>The tasks in the plan's order; ids are unique. What the maker has marked as glued, cut or milled is not among them.</summary>
    public required ImmutableArray<WorkTask> Tasks { get; init; }

    /// <summary>Which task follows which: the one that takes a piece the one that gave it, after glue has set and finish has dried; each pair once. Never in a circle.</summary>
    public required ImmutableArray<ScheduleLink> Links { get; init; }

    /// <summary>The settings of stations that the tasks need.</summary>
    public required ImmutableArray<StationSetting> Settings { get; init; }

    /// <summary>When each gift that is made is ready, in the plan's order.</summary>
    public required ImmutableArray<GiftReady> Gifts { get; init; }

    /// <summary>The work of a plan.</summary>
    /// <param name="plan">A plan that holds.</param>
    /// <param name="rules">What tasks depend on besides; null for none of it.</param>
    public static WorkTasks Of(Plan plan, WorkTaskRules? rules = null) => Of(PlanIndex.Of(plan), rules);

    /// <summary>The same for a plan that is indexed already, its designs derived.</summary>
    /// <param name="index">The plan.</param>
    /// <param name="rules">As above.</param>
    public static WorkTasks Of(PlanIndex index, WorkTaskRules? rules = null)
    {
        ArgumentNullException.ThrowIfNull(index);
        return new WorkTaskMaker(index, rules ?? new()).Make();
    }

    /// <summary>Tasks and all that has to be done before them, each once, those named first.</summary>
    /// <param name="tasks">Their ids.</param>
    internal HashSet<string> WithAllBefore(IEnumerable<string> tasks)
    {
        var before = Links.ToLookup(l => l.After, l => l.Before, StringComparer.Ordinal);
        var found = new HashSet<string>(tasks, StringComparer.Ordinal);
        var open = new Queue<string>(found);
        while (open.TryDequeue(out var task))
            foreach (var earlier in before[task].Where(found.Add)) open.Enqueue(earlier);
        return found;
    }
}
