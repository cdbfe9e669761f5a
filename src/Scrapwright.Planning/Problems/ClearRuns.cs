using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Problems;

/// <summary>Cuts an offcut's length into clear stretches and defect zones.</summary>
internal static class ClearRuns
{
    /// <summary>
    /// The clear stretches of every lane an offcut is ripped into, lane by lane; of the whole offcut where no defect is measured across the width.
    /// What comes off the first edge before ripping may shift a lane by that much, so a lane has to be clear by that much more.
    /// </summary>
    internal static ImmutableArray<ClearRun> Of(Offcut offcut, ImmutableArray<PatternLane> lanes, int layers, Route route, Shop shop)
    {
        var kerf = shop.TableSaw.Kerf;
        if (lanes.Length == layers || offcut.ToCutRound().All(d => d.Across is null))
        {
            return Of(offcut, kerf);
        }

        return [.. lanes.SelectMany((_, lane) => Between(offcut, DefectsIn(offcut, lanes, layers, lane, route, shop), kerf).Select(r => r with { Lane = lane }))];
    }

    /// <summary>The defects a lane has to be cut round.</summary>
    internal static IEnumerable<Defect> DefectsIn(Offcut offcut, ImmutableArray<PatternLane> lanes, int layers, int lane, Route route, Shop shop)
    {
        var (ripKerf, shift) = route == Route.RipFirst ? (shop.Bandsaw.Kerf, Length.Zero) : (shop.TableSaw.Kerf, shop.Allowances.EdgeJoint.Mean);
        var before = lanes.Where((_, i) => i % layers == 0).Take(lane / layers).Select(l => l.RoughWidth + ripKerf);
        var from = Length.Sum(before);
        var to = from + lanes[lane].RoughWidth;
        from -= shift;
        return offcut.ToCutRound().Where(d => d.Across is not { } across || Length.Max(across.From, from) < Length.Min(across.To, to));
    }

    /// <summary>The clear stretches in order over the whole width. A defect zone is at least two kerfs and a millimetre long, so that the cuts at both its ends fall inside it; touching zones are one.</summary>
    internal static ImmutableArray<ClearRun> Of(Offcut offcut, Length kerf) => Between(offcut, offcut.ToCutRound(), kerf);

    private static ImmutableArray<ClearRun> Between(Offcut offcut, IEnumerable<Defect> defects, Length kerf)
    {
        var zones = Zones(offcut, defects, kerf);
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

    private static List<(Length From, Length To)> Zones(Offcut offcut, IEnumerable<Defect> defects, Length kerf)
    {
        var least = (kerf * 2) + Length.FromMillimetres(1);
        var zones = new List<(Length From, Length To)>();
        foreach (var defect in defects.OrderBy(d => d.From).ThenBy(d => d.To))
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
