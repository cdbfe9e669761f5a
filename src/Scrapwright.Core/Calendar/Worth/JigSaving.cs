using System.Collections.Immutable;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar.Worth;

/// <summary>What a jig saves at the tasks of a plan.</summary>
internal static class JigSaving
{
    // No jig takes more than half of a work away, whatever its figures say: our own choice.
    private const int LeftShare = 2;

    /// <summary>True when it serves a task.</summary>
    internal static bool Serves(Jig jig, WorkTask task) => jig.Operations.Contains(task.Operation) && (!jig.OnlySmall || task.SmallPieces > 0);

    /// <summary>Pieces of a task that it serves.</summary>
    internal static int Pieces(Jig jig, WorkTask task) => !Serves(jig, task) ? 0 : jig.OnlySmall ? task.SmallPieces : task.Pieces.Length;

    /// <summary>Saved at the pieces of a task. [s]. Definition: 60 seconds a minute</summary>
    internal static int Seconds(Jig jig, WorkTask task) => Math.Min(Pieces(jig, task) * jig.EachSeconds, task.Minutes * 60 / LeftShare);

    /// <summary>Saved at one setting. [s]</summary>
    internal static int SetUpSeconds(Jig jig, StationSetting setting) => jig.Operations.Contains(setting.Operation) ? Math.Min(jig.SetUpMinutes * 60, setting.Minutes * 60 / LeftShare) : 0;

    /// <summary>The settings of the tasks that it serves.</summary>
    internal static IEnumerable<StationSetting> Settings(Jig jig, WorkTasks work, ImmutableArray<WorkTask> open)
    {
        var used = open.Where(t => Serves(jig, t)).Select(t => t.Setting).ToHashSet(StringComparer.Ordinal);
        return work.Settings.Where(s => used.Contains(s.Key));
    }
}
