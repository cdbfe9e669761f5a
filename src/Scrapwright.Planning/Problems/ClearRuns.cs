using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;

namespace Scrapwright.Planning.Problems;

/// <summary>Cuts an offcut's length into clear stretches and defect zones.</summary>
internal static class ClearRuns
{
    /// <summary>The clear stretches in order. A defect zone is at least two kerfs and a millimetre long, so that the cuts at both its ends fall inside it; touching zones are one.</summary>
    internal static ImmutableArray<ClearRun> Of(Offcut offcut, Length kerf)
    {
        var zones = Zones(offcut, kerf);
        var runs = ImmutableArray.CreateBuilder<ClearRun>();
        var at = Length.Zero;
        foreach (var (from, to) in zones)
        {
            if (from > at)
            {
                runs.Add(new ClearRun(at, from));
            }

            at = to;
        }

        if (at < offcut.Length)
        {
            runs.Add(new ClearRun(at, offcut.Length));
        }

        return runs.ToImmutable();
    }

    private static List<(Length From, Length To)> Zones(Offcut offcut, Length kerf)
    {
        var least = (kerf * 2) + Length.FromMillimetres(1);
        var zones = new List<(Length From, Length To)>();
        foreach (var defect in offcut.Defects.OrderBy(d => d.From).ThenBy(d => d.To))
        {
            var from = defect.From;
            var to = Length.Min(defect.To, offcut.Length);
            if (from >= offcut.Length)
            {
                continue;
            }

            if (to - from < least)
            {
                var missing = least - (to - from);
                from = Length.Max(Length.Zero, from - missing.Divide(2, Rounding.Down));
                to = Length.Min(offcut.Length, from + least);
                from = Length.Max(Length.Zero, to - least);
            }

            if (zones.Count > 0 && zones[^1].To >= from)
            {
                zones[^1] = (zones[^1].From, Length.Max(zones[^1].To, to));
            }
            else
            {
                zones.Add((from, to));
            }
        }

        return zones;
    }
}
