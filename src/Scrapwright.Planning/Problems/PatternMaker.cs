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
        foreach (var (route, lanes) in Layouts(offcut, needs, shop))
        {
            var runs = Runs(lanes, 1, route);
            if (!runs.IsEmpty && IsAllowed(offcut, route, lanes, shop))
            {
                yield return new OffcutPattern(offcut, index, route, lanes, runs);
                for (var layers = 2; layers <= MostLayers && IsResawAllowed(offcut, route, lanes, layers, needs.Thinnest, shop); layers++)
                {
                    ImmutableArray<PatternLane> layered = [.. lanes.SelectMany(l => Enumerable.Repeat(l, layers))];
                    yield return new OffcutPattern(offcut, index, route, layered, Runs(layered, layers, route)) { Layers = layers };
                }
            }
        }

        ImmutableArray<ClearRun> Runs(ImmutableArray<PatternLane> lanes, int layers, Route route) =>
            ClearRuns.Of(offcut, lanes, layers, route, shop);
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

        foreach (var lanes in BesideFlaws(offcut, kerf, shop))
        {
            yield return (route, lanes);
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

    /// <summary>A flawed stretch along one edge ripped off, and the rest beside it in one strip or two.</summary>
    private static IEnumerable<ImmutableArray<PatternLane>> BesideFlaws(Offcut offcut, Length kerf, Shop shop)
    {
        foreach (var across in offcut.ToCutRound().Select(d => d.Across).OfType<WidthStretch>().Distinct())
        {
            var below = ReadableSize.Up(across.To + shop.Allowances.EdgeJoint.Mean, shop.Unit);
            var above = ReadableSize.Up(offcut.Width - across.From, shop.Unit);
            var isBelow = below <= above;
            var flawed = Length.Max(isBelow ? below : above, shop.TableSaw.Kerf);
            var rest = offcut.Width - flawed - kerf;
            if (rest < shop.NarrowestStrip)
            {
                continue;
            }

            yield return Lanes(isBelow ? [flawed, rest] : [rest, flawed], shop);
            var half = ReadableSize.Down((rest - kerf).Divide(2, Rounding.Down), shop.Unit);
            if (half >= shop.NarrowestStrip * 2)
            {
                var other = rest - kerf - half;
                yield return Lanes(isBelow ? [flawed, half, other] : [half, other, flawed], shop);
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
