using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Problems;

/// <summary>
/// Adds to a problem the boards that may be glued face to face from two offcuts which serve nothing alone. All of them are alternatives: whichever boards the search
/// takes, an offcut is in one of them at most.
/// </summary>
internal static class ThinPairs
{
    /// <summary>So many partners each offcut has at most: of five thin offcuts of one wood every pair is there.</summary>
    internal const int MostPartners = 4;

    /// <summary>The problem with its boards; what of boards is done already comes first.</summary>
    internal static Problem AddTo(Problem problem, PatternNeeds needs)
    {
        var settled = Settled(problem).ToList();
        var (boards, patterns) = WithPatterns(problem, settled, board => DoneParts.FindPattern(problem.Done, board.Offcut, board.Index, board.IsSaved, problem.Shop) is { } cut ? [cut] : []);
        problem = problem with { Offcuts = [.. problem.Offcuts, .. boards], Patterns = [.. problem.Patterns, .. patterns] };
        var thin = Thin(problem, settled.SelectMany(f => (int[])[f.Upper, f.Lower]).ToHashSet());
        var pairs = Pairs(problem, thin);
        if (pairs.Count == 0)
        {
            return problem;
        }

        // Only boards that could serve something stay.
        var (all, ways) = WithPatterns(problem, pairs, board => PatternMaker.For(board.Offcut, board.Index, needs, problem.Shop));
        var useful = UsableOffcuts(problem with { Offcuts = [.. problem.Offcuts, .. all], Patterns = ways });
        var kept = pairs.Where((_, i) => useful.Contains(problem.Offcuts.Length + i)).ToList();
        (boards, patterns) = WithPatterns(problem, kept, board => PatternMaker.For(board.Offcut, board.Index, needs, problem.Shop));
        return problem with { Offcuts = [.. problem.Offcuts, .. boards], Patterns = [.. problem.Patterns, .. patterns] };
    }

    /// <summary>Boards of which something is done.</summary>
    private static IEnumerable<Facing> Settled(Problem problem)
    {
        var places = problem.Offcuts.Index().ToDictionary(o => o.Item.Label, o => o.Index, StringComparer.Ordinal);
        var singles = problem.Offcuts.ToDictionary(o => o.Label, StringComparer.Ordinal);
        return problem.Done.Faced.Select(label => FaceGluing.Find(label, singles, problem.Shop)).OfType<FaceGluing>()
            .Select(g => new Facing(g, places[g.Upper.Label], places[g.Lower.Label]));
    }

    private static (ImmutableArray<Offcut> Boards, ImmutableArray<OffcutPattern> Patterns) WithPatterns(
        Problem problem, IReadOnlyList<Facing> facings, Func<(Offcut Offcut, int Index, bool IsSaved), IEnumerable<OffcutPattern>> patternsOf)
    {
        var saved = problem.Request.Choices.SavedIn(problem.Request.Pile);
        ImmutableArray<Offcut> boards = [.. facings.Select(f => f.Gluing.Board)];
        return (boards,
        [
            .. facings.SelectMany((facing, i) => patternsOf((boards[i], problem.Offcuts.Length + i, saved.Contains(facing.Gluing.Upper.Label) || saved.Contains(facing.Gluing.Lower.Label)))
                .Select(p => p with { Facing = facing })),
        ]);
    }

    /// <summary>Places of the offcuts that are free, not pinned, and serve nothing because they are too thin.</summary>
    private static List<int> Thin(Problem problem, HashSet<int> inBoards)
    {
        var spread = StripMilling.RoughSpread(problem.Shop);
        // What is thick enough for one way of gluing up every part is not thin: no more of its use has to be worked out.
        var thickest = problem.Panels.Where(p => p.Done is null).GroupBy(p => (p.GiftIndex, p.Part.Key), (_, ways) => ways.Min(p => p.Needs.StripThickness(spread)))
            .Concat(problem.Runs.Where(r => r.Done is null).Select(r => r.Needs.StripThickness(spread))).DefaultIfEmpty(Length.Zero).Max();
        var pinned = problem.Request.Choices.Pins.Select(p => p.Offcut).Concat(problem.Done.Milled.Select(m => m.Offcut)).ToHashSet(StringComparer.Ordinal);
        var saved = problem.Request.Choices.SavedIn(problem.Request.Pile);
        List<int> low =
        [
            .. problem.Offcuts.Index().Where(o => !o.Item.Label.Contains(FaceGluing.Sign, StringComparison.Ordinal) && !inBoards.Contains(o.Index) && !pinned.Contains(o.Item.Label)
                    && !saved.Contains(o.Item.Label) && !problem.Done.LeftAlone.Contains(o.Item.Label)
                    && StripMilling.Thickness(o.Item, o.Item.Length, o.Item.Width, problem.Shop).End < thickest)
                .Select(o => o.Index),
        ];
        if (low.Count < 2)
        {
            return [];
        }

        var useful = UsableOffcuts(problem with { Patterns = [.. problem.Patterns.Where(p => low.Contains(p.OffcutIndex))] });
        return [.. low.Where(o => !useful.Contains(o))];
    }

    /// <summary>Places of the offcuts that could serve something.</summary>
    private static HashSet<int> UsableOffcuts(Problem problem)
    {
        var options = new SegmentOptions(problem);
        return problem.Panels.Select(p => options.ForPanel(p.Index)).Concat(problem.Runs.Select(r => options.ForSolid(r.Index))).Distinct()
            .SelectMany(list => list.Select(o => problem.Patterns[o.Segment.Pattern].OffcutIndex)).ToHashSet();
    }

    /// <summary>Pairs of one wood, in rounds: in each every offcut finds one partner, the pairs that give most wood first. So the offcuts can all go in pairs however few partners each has.</summary>
    private static List<Facing> Pairs(Problem problem, List<int> thin)
    {
        var pairs = new List<Facing>();
        foreach (var wood in thin.GroupBy(o => problem.Offcuts[o].Species))
        {
            var open = wood.SelectMany((one, i) => wood.Skip(i + 1).Select(other => new Facing(new FaceGluing(problem.Offcuts[one], problem.Offcuts[other], problem.Shop), one, other)))
                .Where(f => f.Gluing.IsAllowed).OrderByDescending(f => Bulk(f.Gluing.Board)).ToList();
            for (var round = 0; round < MostPartners && open.Count > 0; round++)
            {
                var paired = new HashSet<int>();
                var taken = open.Where(f => !paired.Contains(f.Upper) && !paired.Contains(f.Lower) && paired.Add(f.Upper) && paired.Add(f.Lower)).ToList();
                pairs.AddRange(taken);
                open.RemoveAll(taken.Contains);
            }
        }

        return [.. pairs.OrderBy(f => f.Upper).ThenBy(f => f.Lower)];
    }

    private static Int128 Bulk(Offcut board) => Volume.Of(board.Length, board.Width, board.Thickness).CubicPicometres;
}
