namespace Scrapwright.Core.Calendar.Building;

/// <summary>Which setting stands in which window, from when to when.</summary>
internal sealed class StandingSetUps
{
    private readonly int[] first;
    private readonly (int Start, int End)[] standing;

    /// <summary>None stands.</summary>
    internal StandingSetUps(ScheduleFacts facts)
    {
        first = new int[facts.SetUps.Length + 1];
        for (var key = 0; key < facts.SetUps.Length; key++)
        {
            first[key + 1] = first[key] + (facts.SetUpHours[key] == ScheduleFacts.None ? 0 : facts.Windows[facts.SetUpHours[key]].Length);
        }

        standing = new (int, int)[first[^1]];
        Clear();
    }

    /// <summary>What does not stand.</summary>
    internal static (int Start, int End) Absent => (ScheduleFacts.None, ScheduleFacts.None);

    /// <summary>When a setting stands in a window, or absent.</summary>
    internal (int Start, int End) this[int setUp, int window]
    {
        get => standing[first[setUp] + window];
        set => standing[first[setUp] + window] = value;
    }

    /// <summary>None stands any more.</summary>
    internal void Clear() => Array.Fill(standing, Absent);

    /// <summary>All that stand, by setting and window.</summary>
    internal IEnumerable<(int SetUp, int Start, int End)> All()
    {
        for (var key = 0; key + 1 < first.Length; key++)
        {
            for (var i = first[key]; i < first[key + 1]; i++)
            {
                if (standing[i] != Absent) yield return (key, standing[i].Start, standing[i].End);
            }
        }
    }
}
