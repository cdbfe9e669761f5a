using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Planning.Problems;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Building;

/// <summary>
/// Lays segments, rests and defects out along a lane. Outputs and the kerfs between them are the whole length. What is paired with a sister comes first, in the same order in both lanes,
/// so that sisters come from the same stretch of their stick.
/// </summary>
internal static class LengthLayout
{
    internal static ImmutableArray<LengthOutput> Of(
        OffcutPattern pattern, int lane, ImmutableArray<Segment> segments, string id, Length kerf, Func<Segment, Length> needed, Func<Segment, int> paired)
    {
        if (pattern.IsCut(lane))
        {
            return [.. pattern.RunsOf(lane).SelectMany(r => OfPiece(r.Run, [.. segments.Where(s => s.Run == r.Index)], kerf, needed, paired))];
        }

        var outputs = new List<(Length Length, Segment? Segment, bool IsDefect)>();
        var at = Length.Zero;
        foreach (var (r, run) in pattern.RunsOf(lane))
        {
            AddDefect(outputs, at, run.From, kerf, isLast: false);
            AddRun(outputs, run, InOrder(segments.Where(s => s.Run == r), needed, paired), kerf, needed);
            at = run.To;
        }

        AddDefect(outputs, at, pattern.Offcut.Length, kerf, isLast: true);
        return [.. outputs.Select((o, i) => new LengthOutput($"{id}/{i + 1}", o.Length, o.Segment, o.IsDefect))];
    }

    private static List<Segment> InOrder(IEnumerable<Segment> segments, Func<Segment, Length> needed, Func<Segment, int> paired) =>
    [
        .. segments.GroupBy(s => s).SelectMany(copies => copies.Index().Select(copy => (Segment: copy.Item, IsPaired: copy.Index < paired(copy.Item))))
            .OrderByDescending(s => s.IsPaired).ThenByDescending(s => needed(s.Segment)).ThenBy(s => s.Segment.Panel).ThenBy(s => s.Segment.Solid).Select(s => s.Segment),
    ];

    /// <summary>A piece that is cut already: as it is, or cut once more for new uses. It keeps its id; what is cut from it bears a letter behind.</summary>
    private static IEnumerable<LengthOutput> OfPiece(
        ClearRun run, ImmutableArray<Segment> segments, Length kerf, Func<Segment, Length> needed, Func<Segment, int> paired)
    {
        if (segments.IsEmpty || run.IsClosed)
        {
            return [new LengthOutput(run.Piece!, run.Length, segments.IsEmpty ? null : segments[0], run.IsDefect)];
        }

        var cut = new List<(Length Length, Segment? Segment, bool IsDefect)>();
        AddRun(cut, run, InOrder(segments, needed, paired), kerf, needed);
        return cut.Select((o, i) => new LengthOutput(cut.Count == 1 ? run.Piece! : $"{run.Piece}{(char)('a' + i)}", o.Length, o.Segment, o.IsDefect));
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
