using Scrapwright.Core.Measures;

namespace Scrapwright.Planning.Cutting;

/// <summary>Turns rectangles put together into the cuts that part them, in exact lengths.</summary>
internal static class CutTreeMaker
{
    /// <summary>The cuts of a whole board.</summary>
    /// <param name="build">What is to come of it; null for nothing.</param>
    /// <param name="markPicometres">One mark of the build. [pm]</param>
    /// <param name="problem">The board.</param>
    internal static CutTree Make(BoardBuild? build, long markPicometres, BoardProblem problem) =>
        build is null ? new CutTree.Spare() : new Maker(markPicometres, problem).Make(build, problem.Length, problem.Width);

    private sealed class Maker(long mark, BoardProblem problem)
    {
        internal CutTree Make(BoardBuild build, Length length, Length width)
        {
            // Spare wood comes off first and in one piece: it is worth more long and wide.
            var (buildLength, buildWidth) = (LengthOf(build), WidthOf(build));
            if (width > buildWidth) return new CutTree.Rip(buildWidth, Make(build, length, buildWidth), new CutTree.Spare());
            if (length > buildLength) return new CutTree.Crosscut(buildLength, Make(build, buildLength, width), new CutTree.Spare());
            switch (build)
            {
                case BoardBuild.EndToEnd pair:
                    var first = LengthOf(pair.First);
                    return new CutTree.Crosscut(first, Make(pair.First, first, width), Make(pair.Second, length - first - problem.Kerf, width));
                case BoardBuild.SideBySide pair:
                    var side = WidthOf(pair.First);
                    return new CutTree.Rip(side, Make(pair.First, length, side), Make(pair.Second, length, width - side - problem.Kerf));
                case BoardBuild.One one:
                    return Trim(one.Shape, length, width);
                default:
                    throw new InvalidOperationException($"An unknown build: {build}.");
            }
        }

        /// <summary>Where sizes were rounded up, the part is a little smaller than its place.</summary>
        private CutTree Trim(BoardShape shape, Length length, Length width)
        {
            CutTree tree = new CutTree.Placed(shape.Part, shape.IsTurned);
            var (partLength, partWidth) = (LengthOf(shape), WidthOf(shape));
            if (width > partWidth) tree = new CutTree.Rip(partWidth, tree, new CutTree.Spare());
            return length > partLength ? new CutTree.Crosscut(partLength, tree, new CutTree.Spare()) : tree;
        }

        private Length LengthOf(BoardBuild build) => Length.FromPicometres((build.Length * mark) - problem.Kerf.Picometres);

        private Length WidthOf(BoardBuild build) => Length.FromPicometres((build.Width * mark) - problem.Kerf.Picometres);

        private Length LengthOf(BoardShape shape) => shape.IsTurned ? problem.Parts[shape.Part].Width : problem.Parts[shape.Part].Length;

        private Length WidthOf(BoardShape shape) => shape.IsTurned ? problem.Parts[shape.Part].Length : problem.Parts[shape.Part].Width;
    }
}
