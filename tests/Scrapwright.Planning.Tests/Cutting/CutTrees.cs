using Scrapwright.Core.Measures;
using Scrapwright.Planning.Cutting;

namespace Scrapwright.Planning.Tests.Cutting;

/// <summary>Follows the cuts of a tree with exact lengths, from the board alone: each goes right through, a kerf lies in it, and what is left at its end is the part.</summary>
internal static class CutTrees
{
    internal static void Check(BoardProblem problem, BoardLayout layout)
    {
        var placed = new List<Place>();
        Follow(layout.Tree, new Place(-1, Length.Zero, Length.Zero, problem.Length, problem.Width), problem, placed);

        Assert.Equal(layout.Value, placed.Sum(p => problem.Parts[p.Part].Value));
        Assert.True(layout.Value <= layout.Bound);
        Assert.All(placed.GroupBy(p => p.Part), g => Assert.True(g.Count() <= (problem.Parts[g.Key].Count ?? int.MaxValue)));
        for (var a = 0; a < placed.Count; a++)
        {
            var (one, kerf) = (placed[a], problem.Kerf);
            Assert.True(!one.X.IsNegative && !one.Y.IsNegative && one.X + one.Length <= problem.Length && one.Y + one.Width <= problem.Width);
            for (var b = 0; b < a; b++)
            {
                var two = placed[b];
                Assert.True(
                    one.X + one.Length + kerf <= two.X || two.X + two.Length + kerf <= one.X || one.Y + one.Width + kerf <= two.Y || two.Y + two.Width + kerf <= one.Y,
                    $"{one} and {two} are less than a kerf apart.");
            }
        }
    }

    private static void Follow(CutTree tree, Place place, BoardProblem problem, List<Place> placed)
    {
        switch (tree)
        {
            case CutTree.Crosscut cut:
                Assert.True(cut.At.IsPositive && cut.At < place.Length);
                Follow(cut.First, place with { Length = cut.At }, problem, placed);
                var after = cut.At + problem.Kerf;
                Rest(cut.Second, place with { X = place.X + after, Length = place.Length - after }, problem, placed);
                break;
            case CutTree.Rip rip:
                Assert.True(rip.At.IsPositive && rip.At < place.Width);
                Follow(rip.First, place with { Width = rip.At }, problem, placed);
                var beside = rip.At + problem.Kerf;
                Rest(rip.Second, place with { Y = place.Y + beside, Width = place.Width - beside }, problem, placed);
                break;
            case CutTree.Placed one:
                var part = problem.Parts[one.Part];
                Assert.True(part.MayTurn || !one.IsTurned);
                Assert.Equal(one.IsTurned ? (part.Width, part.Length) : (part.Length, part.Width), (place.Length, place.Width));
                placed.Add(place with { Part = one.Part });
                break;
            default:
                Assert.IsType<CutTree.Spare>(tree);
                break;
        }
    }

    private static void Rest(CutTree tree, Place place, BoardProblem problem, List<Place> placed)
    {
        if (!place.Length.IsPositive || !place.Width.IsPositive) Assert.IsType<CutTree.Spare>(tree);
        Follow(tree, place, problem, placed);
    }

    private sealed record Place(int Part, Length X, Length Y, Length Length, Length Width);
}
