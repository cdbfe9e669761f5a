using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Planning.Problems;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Building;

/// <summary>Lays segments, rests and defects out along a lane. Outputs and the kerfs between them are the whole length.</summary>
internal static class LengthLayout
{
    internal static ImmutableArray<LengthOutput> Of(
        OffcutPattern pattern, ImmutableArray<Segment> segments, string id, Length kerf, Func<Segment, Length> needed)
    {
        var outputs = new List<(Length Length, Segment? Segment, bool IsDefect)>();
        var at = Length.Zero;
        for (var r = 0; r < pattern.Runs.Length; r++)
        {
            var run = pattern.Runs[r];
            AddDefect(outputs, at, run.From, kerf, isLast: false);
            var mine = segments.Where(s => s.Run == r).OrderByDescending(needed).ThenBy(s => s.Panel).ThenBy(s => s.Solid).ToList();
            AddRun(outputs, run, mine, kerf, needed);
            at = run.To;
        }

        AddDefect(outputs, at, pattern.Offcut.Length, kerf, isLast: true);
        return [.. outputs.Select((o, i) => new LengthOutput($"{id}/{i + 1}", o.Length, o.Segment, o.IsDefect))];
    }

    /// <summary>The cuts at both ends of a defect zone fall inside it.</summary>
    private static void AddDefect(List<(Length, Segment?, bool)> outputs, Length from, Length to, Length kerf, bool isLast)
    {
        var length = to - from;
        if (length == Length.Zero)
        {
            return;
        }

        outputs.Add((length - (from > Length.Zero ? kerf : Length.Zero) - (isLast ? Length.Zero : kerf), null, true));
    }

    private static void AddRun(
        List<(Length, Segment?, bool)> outputs, ClearRun run, List<Segment> segments, Length kerf, Func<Segment, Length> needed)
    {
        if (segments.Count == 0)
        {
            outputs.Add((run.Length, null, false));
            return;
        }

        var rest = run.Length - Length.Sum(segments.Select(needed)) - (kerf * (segments.Count - 1));
        var hasRest = rest > kerf;
        for (var i = 0; i < segments.Count; i++)
        {
            var more = i == segments.Count - 1 && !hasRest ? rest : Length.Zero;
            outputs.Add((needed(segments[i]) + more, segments[i], false));
        }

        if (hasRest)
        {
            outputs.Add((rest - kerf, null, false));
        }
    }
}
