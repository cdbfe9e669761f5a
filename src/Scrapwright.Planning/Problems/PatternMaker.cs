using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Problems;

/// <summary>The ways to mill and rip one offcut that are worth a thought.</summary>
internal static class PatternMaker
{
    private const int MostLayers = 3;

    /// <summary>
    /// Whole; in halves, thirds and quarters; a third beside two thirds; and with one or two strips of each width that solid parts or accents want, the rest beside it.
    /// Each of these also sawn into layers, where a layer is as thick as the thinnest strip that anything needs.
    /// </summary>
    internal static IEnumerable<OffcutPattern> For(Offcut offcut, int index, PatternNeeds needs, Shop shop)
    {
        var runs = ClearRuns.Of(offcut, shop.TableSaw.Kerf);
        if (runs.IsEmpty)
        {
            yield break;
        }

        foreach (var (route, lanes) in Layouts(offcut, needs, shop))
        {
            if (IsAllowed(offcut, route, lanes, shop))
            {
                yield return new OffcutPattern(offcut, index, route, lanes, runs);
                for (var layers = 2; layers <= MostLayers && IsResawAllowed(offcut, route, lanes, layers, needs.Thinnest, shop); layers++)
                {
                    yield return new OffcutPattern(offcut, index, route, [.. lanes.SelectMany(l => Enumerable.Repeat(l, layers))], runs) { Layers = layers };
                }
            }
        }
    }

    private static IEnumerable<(Route Route, ImmutableArray<PatternLane> Lanes)> Layouts(Offcut offcut, PatternNeeds needs, Shop shop)
    {
        var whole = Lanes([offcut.Width], shop);
        if (!whole.IsEmpty)
        {
            yield return (Route.MillWhole, whole);
            if (offcut.Bow > Length.Zero || offcut.Twist > Length.Zero)
            {
                yield return (Route.CrosscutFirst, whole);
            }
        }

        var route = RipsBetterFirst(offcut, shop) ? Route.RipFirst : Route.MillWhole;
        var kerf = route == Route.RipFirst ? shop.Bandsaw.Kerf : shop.TableSaw.Kerf;
        for (var count = 2; count <= 4; count++)
        {
            var share = ReadableSize.Down((offcut.Width - (kerf * (count - 1))).Divide(count, Rounding.Down), shop.Unit);
            var least = shop.NarrowestStrip * 2;
            if (share >= least)
            {
                var rest = offcut.Width - ((share + kerf) * (count - 1));
                yield return (route, Lanes([.. Enumerable.Repeat(share, count - 1), rest], shop));
                if (count == 3)
                {
                    yield return (route, Lanes([share, offcut.Width - share - kerf], shop));
                }
            }
        }

        foreach (var width in needs.SolidWidths)
        {
            foreach (var (lanes, count) in Beside(width))
            {
                yield return (route, [.. lanes.Select((l, i) => l with { IsForSolidParts = i < count })]);
            }
        }

        if (needs.AccentWidth > Length.Zero)
        {
            foreach (var (lanes, _) in Beside(needs.AccentWidth))
            {
                yield return (route, lanes);
            }
        }

        IEnumerable<(ImmutableArray<PatternLane> Lanes, int Count)> Beside(Length width)
        {
            for (var count = 1; count <= 2; count++)
            {
                var rest = offcut.Width - ((width + kerf) * count);
                if (rest >= shop.NarrowestStrip)
                {
                    yield return (Lanes([.. Enumerable.Repeat(width, count), rest], shop), count);
                }
            }
        }
    }

    /// <summary>Ripping first pays when the board is cupped, and is the only way at the machine when it is wider than the jointer.</summary>
    private static bool RipsBetterFirst(Offcut offcut, Shop shop) =>
        offcut.Cup > Length.Zero || (StripMilling.NeedsFaceJoint(offcut) && offcut.Width > shop.Jointer.MaximumWidth);

    private static ImmutableArray<PatternLane> Lanes(ImmutableArray<Length> widths, Shop shop)
    {
        var lanes = widths.Select(w => new PatternLane(w, StripMilling.Width(w, shop).End)).ToImmutableArray();
        return lanes.Length == 1 && lanes[0].NetWidth <= Length.Zero ? [] : lanes;
    }

    private static bool IsAllowed(Offcut offcut, Route route, ImmutableArray<PatternLane> lanes, Shop shop)
    {
        if (route == Route.CrosscutFirst)
        {
            return true;
        }

        var width = route == Route.RipFirst ? lanes.Max(l => l.RoughWidth) : offcut.Width;
        var ladder = StripMilling.Thickness(offcut, offcut.Length, width, shop);
        return ladder.End > Length.Zero && StripRules.Allow(offcut, offcut.Length, width, ladder.End, shop)
            && (lanes.Length == 1 || IsRipAllowed(offcut, route, lanes, ladder.End, shop));
    }

    private static bool IsResawAllowed(Offcut offcut, Route route, ImmutableArray<PatternLane> lanes, int layers, Length thinnest, Shop shop)
    {
        if (route == Route.CrosscutFirst)
        {
            return false;
        }

        var width = lanes.Max(l => l.NetWidth);
        var layer = StripMilling.Thickness(offcut, offcut.Length, route == Route.RipFirst ? lanes.Max(l => l.RoughWidth) : offcut.Width, layers, shop).End;
        return layer >= thinnest
            && StationRules.Rule(Operation.ResawStrips, offcut.Length, width, layer, shop) is not StationRuling.Refused
            && StationRules.Rule(Operation.CleanSawnFaces, offcut.Length, width, layer, shop) is not StationRuling.Refused;
    }

    private static bool IsRipAllowed(Offcut offcut, Route route, ImmutableArray<PatternLane> lanes, Length milled, Shop shop)
    {
        var narrowest = lanes.Min(l => l.RoughWidth);
        var ruling = route == Route.RipFirst
            ? StationRules.Rule(Operation.RoughRip, offcut.Length, narrowest, offcut.Thickness, shop)
            : StationRules.Rule(Operation.Rip, offcut.Length, narrowest, milled, shop);
        return ruling is not StationRuling.Refused;
    }
}
