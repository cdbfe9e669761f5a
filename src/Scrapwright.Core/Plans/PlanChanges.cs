using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans.Choices;

namespace Scrapwright.Core.Plans;

/// <summary>What differs between two plans of one workshop, in the maker's words.</summary>
public static class PlanChanges
{
    private const double CubicMillimetresPerBoardFoot = 144 * 25.4 * 25.4 * 25.4;

    /// <summary>Every difference, the weightiest kind first; empty when both come to the same at the bench.</summary>
    /// <param name="former">The plan before.</param>
    /// <param name="plan">The plan now.</param>
    public static ImmutableArray<PlanChange> Between(Plan former, Plan plan)
    {
        ArgumentNullException.ThrowIfNull(former);
        ArgumentNullException.ThrowIfNull(plan);
        var matches = GlueUpMatch.Of(former, plan);
        return [.. Gifts(former, plan), .. GlueUps(matches), .. Strips(matches), .. Orders(matches), .. Boards(former, plan), .. Offcuts(former, plan), .. Amounts(former, plan)];
    }

    private static IEnumerable<PlanChange> Gifts(Plan former, Plan plan)
    {
        var before = former.Made.Select(m => m.Gift).ToHashSet(StringComparer.Ordinal);
        var now = plan.Made.Select(m => m.Gift).ToHashSet(StringComparer.Ordinal);
        foreach (var made in plan.Made.Where(m => !before.Contains(m.Gift))) yield return new(ChangeKind.Gift, $"{made.Gift} is made now");
        foreach (var made in former.Made.Where(m => !now.Contains(m.Gift)))
        {
            var listed = plan.Request.Gifts.Any(g => g.Label == made.Gift);
            yield return new(ChangeKind.Gift, listed ? $"{made.Gift} is not made any more" : $"{made.Gift} is off the list");
        }
    }

    private static IEnumerable<PlanChange> GlueUps(ImmutableArray<GlueUpMatch> matches)
    {
        foreach (var match in matches)
        {
            switch (match)
            {
                case { Before: null, Now: { } now }:
                    yield return new(ChangeKind.GlueUp, $"{now.Id} is new, for {string.Join(", ", now.ForGifts())}: {string.Join(", ", now.Strips.Select(s => s.Offcut))}");
                    break;
                case { Before: { } before, Now: null }:
                    yield return new(ChangeKind.GlueUp, $"{before.Id}, for {before.Gift}, is not glued");
                    break;
                case { Before: { } before, Now: { } now } when (before.Blanks, before.Layers) != (now.Blanks, now.Layers):
                    yield return new(ChangeKind.GlueUp, $"{now.Id} gives {Count(now.Blanks * now.Layers, "blank")} instead of {before.Blanks * before.Layers}");
                    break;
            }
        }
    }

    private static IEnumerable<PlanChange> Strips(ImmutableArray<GlueUpMatch> matches)
    {
        var gone = matches.SelectMany(m => m.Gone.Select(s => (s.Offcut, s.RoughWidth, Id: m.Before!.Id))).ToList();
        var come = matches.SelectMany(m => m.Come.Select(s => (s.Offcut, s.RoughWidth, Id: m.Now!.Id))).ToList();
        foreach (var strip in come.ToList())
        {
            // The same wood in another glue-up is one change, not two.
            var from = gone.FindIndex(g => g.Offcut == strip.Offcut);
            if (from >= 0)
            {
                var width = gone[from].RoughWidth == strip.RoughWidth ? "" : ", of another width,";
                yield return new(ChangeKind.Strip, gone[from].Id == strip.Id
                    ? $"strip of {strip.Offcut} in {strip.Id} has another width"
                    : $"strip of {strip.Offcut}{width} goes to {strip.Id} instead of {gone[from].Id}");
                gone.RemoveAt(from);
                come.Remove(strip);
            }
        }

        foreach (var place in gone.Concat(come).Select(s => s.Id).Distinct().ToList())
        {
            var went = gone.Where(g => g.Id == place).Select(g => g.Offcut).ToList();
            var came = come.Where(g => g.Id == place).Select(g => g.Offcut).ToList();
            yield return new(ChangeKind.Strip, (went.Count, came.Count) switch
            {
                (0, _) => $"{place}: {string.Join(", ", came)} is added",
                (_, 0) => $"{place}: {string.Join(", ", went)} is taken out",
                _ => $"{place}: {string.Join(", ", came)} instead of {string.Join(", ", went)}",
            });
        }
    }

    private static IEnumerable<PlanChange> Orders(ImmutableArray<GlueUpMatch> matches)
    {
        foreach (var match in matches)
        {
            if (match is { Before: { } before, Now: { } now } && match.Gone.IsEmpty && match.Come.IsEmpty
                && !before.Strips.Select(ChosenStrip.Of).SequenceEqual(now.Strips.Select(ChosenStrip.Of)))
            {
                yield return new(ChangeKind.Order, $"order of {now.Id}: {string.Join(", ", now.Strips.Select(s => s.Offcut))} from the lower edge");
            }
        }
    }

    private static IEnumerable<PlanChange> Boards(Plan former, Plan plan)
    {
        foreach (var gift in former.Boards.Select(b => b.Gift).Intersect(plan.Boards.Select(b => b.Gift)))
        {
            var before = former.Boards.Where(b => b.Gift == gift).Select(b => b.Offcut).ToList();
            var now = plan.Boards.Where(b => b.Gift == gift).Select(b => b.Offcut).ToList();
            foreach (var same in now.ToList().Where(before.Remove)) now.Remove(same);
            if (now.Count > 0) yield return new(ChangeKind.Board, $"boards of {gift}: {string.Join(", ", now)} instead of {string.Join(", ", before)}");
        }
    }

    private static IEnumerable<PlanChange> Offcuts(Plan former, Plan plan)
    {
        var before = Used(former);
        var now = Used(plan);
        var inPile = plan.Ledger.Select(r => r.Offcut).ToHashSet(StringComparer.Ordinal);
        foreach (var label in now.Except(before)) yield return new(ChangeKind.Offcut, plan.Faced.FirstOrDefault(f => f.Label == label) is { } board
            ? $"offcuts {board.Upper} and {board.Lower} are glued face to face now" : $"offcut {label} is cut now");
        foreach (var label in before.Except(now))
        {
            if (former.Faced.FirstOrDefault(f => f.Label == label) is { } board) yield return new(ChangeKind.Offcut, $"offcuts {board.Upper} and {board.Lower} are not glued face to face");
            else if (inPile.Contains(label)) yield return new(ChangeKind.Offcut, $"offcut {label} stays whole");
        }
    }

    private static IEnumerable<PlanChange> Amounts(Plan former, Plan plan)
    {
        var loads = plan.GlueUps.Length + plan.Faced.Length - former.GlueUps.Length - former.Faced.Length;
        if (loads != 0) yield return new(ChangeKind.Amount, $"{Count(Math.Abs(loads), $"{(loads > 0 ? "more" : "fewer")} clamp load")}");
        var wood = WoodOf(plan) - WoodOf(former);
        if (wood != 0) yield return new(ChangeKind.Amount, $"{Wood(Math.Abs(wood), plan.Request.Shop.Unit)} {(wood > 0 ? "more" : "less")} wood");
    }

    private static long WoodOf(Plan plan) => plan.Levels.FirstOrDefault(l => l.Kind == LevelKind.WoodUsed)?.Value ?? 0;

    private static List<string> Used(Plan plan) =>
        [.. plan.GlueUps.SelectMany(g => g.Strips).Select(s => s.Offcut).Concat(plan.Boards.Select(b => b.Offcut)).Distinct()];

    private static string Count(int count, string what) => $"{count} {what}{(count == 1 ? "" : "s")}";

    private static string Wood(long cubicMillimetres, LengthUnit unit) =>
        unit == LengthUnit.Inch ? $"{cubicMillimetres / CubicMillimetresPerBoardFoot:0.00} board feet" : $"{cubicMillimetres / 1e6:0.00} litres";
}
