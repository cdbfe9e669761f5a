namespace Scrapwright.Core.Calendar.Building;

/// <summary>Tasks that are placed together, because the gap between them has a limit; each group after all that it follows can be placed.</summary>
internal sealed class TaskGroups
{
    /// <summary>Groups the tasks of a problem.</summary>
    internal TaskGroups(ScheduleFacts facts)
    {
        var linked = Linked(facts);
        Of = Merged(facts, linked);
        var groups = Of.DefaultIfEmpty(-1).Max() + 1;
        var members = new List<int>[groups];
        for (var g = 0; g < groups; g++) members[g] = [];
        foreach (var task in facts.Order) members[Of[task]].Add(task);
        Members = [.. members.Select(m => m.ToArray())];
        After = new int[groups][];
        Before = new int[groups];
        for (var g = 0; g < groups; g++)
        {
            After[g] = [.. Members[g].SelectMany(t => facts.OutOf[t]).Select(l => Of[l.After]).Where(other => other != g).Distinct()];
            foreach (var other in After[g]) Before[other]++;
        }
    }

    /// <summary>By task: its group.</summary>
    internal int[] Of { get; }

    /// <summary>By group: its tasks, each after all that it follows.</summary>
    internal int[][] Members { get; }

    /// <summary>By group: the groups that follow.</summary>
    internal int[][] After { get; }

    /// <summary>By group: how many groups it follows.</summary>
    internal int[] Before { get; }

    /// <summary>Tasks joined by links with a limit.</summary>
    private static int[] Linked(ScheduleFacts facts)
    {
        var head = Enumerable.Range(0, facts.Count).ToArray();
        foreach (var link in facts.Into.SelectMany(links => links).Where(l => l.HasMost)) head[Head(link.Before)] = Head(link.After);
        return [.. head.Select((_, task) => Head(task))];

        int Head(int task)
        {
            while (head[task] != task) task = head[task] = head[head[task]];
            return task;
        }
    }

    /// <summary>Groups that lie on a circle become one: strongly connected parts, by two walks (Kosaraju; from memory).</summary>
    private static int[] Merged(ScheduleFacts facts, int[] linked)
    {
        var members = Enumerable.Range(0, facts.Count).ToLookup(t => linked[t]);
        var finished = new List<int>();
        var seen = new HashSet<int>();
        foreach (var group in members.Select(m => m.Key)) Walk(group, g => members[g].SelectMany(t => facts.OutOf[t]).Select(l => linked[l.After]), seen, finished.Add);
        var number = new Dictionary<int, int>();
        var parts = 0;
        seen.Clear();
        for (var i = finished.Count - 1; i >= 0; i--)
        {
            if (seen.Contains(finished[i])) continue;
            var part = parts++;
            Walk(finished[i], g => members[g].SelectMany(t => facts.Into[t]).Select(l => linked[l.Before]), seen, g => number[g] = part);
        }

        return [.. linked.Select(g => number[g])];
    }

    private static void Walk(int from, Func<int, IEnumerable<int>> next, HashSet<int> seen, Action<int> finish)
    {
        if (!seen.Add(from)) return;
        var path = new Stack<(int Node, IEnumerator<int> Next)>();
        path.Push((from, next(from).GetEnumerator()));
        while (path.Count > 0)
        {
            var (node, ahead) = path.Peek();
            if (!ahead.MoveNext())
            {
                path.Pop();
                ahead.Dispose();
                finish(node);
            }
            else if (seen.Add(ahead.Current))
            {
                path.Push((ahead.Current, next(ahead.Current).GetEnumerator()));
            }
        }
    }
}
