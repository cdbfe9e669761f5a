using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>What is still free in the pile while a placement grows: the pattern each offcut has been given and the room taken in its lanes, on the solver's grid.</summary>
internal sealed class OpenPile
{
    private const int Untouched = -1;

    private readonly Problem problem;
    private readonly int[] patternOf;
    private readonly long[] taken;

    internal OpenPile(Problem problem)
    {
        this.problem = problem;
        patternOf = [.. Enumerable.Repeat(Untouched, problem.Offcuts.Length)];
        taken = new long[problem.Rooms.Length];
    }

    private OpenPile(OpenPile other)
    {
        problem = other.problem;
        patternOf = [.. other.patternOf];
        taken = [.. other.taken];
    }

    internal OpenPile Copy() => new(this);

    /// <summary>The pattern an offcut has been given, or null.</summary>
    internal int? PatternOf(int offcut) => patternOf[offcut] == Untouched ? null : patternOf[offcut];

    /// <summary>What is taken at a place already, kerfs included.</summary>
    internal long TakenAt(int place) => taken[place];

    /// <summary>True when it can still be taken.</summary>
    internal bool HasRoom(SegmentOption option)
    {
        var pattern = problem.Patterns[option.Segment.Pattern];
        return IsFree(pattern.OffcutIndex) && (pattern.Facing is not { } facing || (IsFree(facing.Upper) && IsFree(facing.Lower)))
            && taken[option.Place] + option.Marks <= problem.Rooms[option.Place];

        bool IsFree(int offcut) => patternOf[offcut] == Untouched || patternOf[offcut] == option.Segment.Pattern;
    }

    /// <summary>Takes it.</summary>
    internal void Take(SegmentOption option) => Take(option.Segment, option.Place, option.Marks);

    /// <summary>Takes a segment of a placement.</summary>
    internal void Take(Segment segment) => Take(segment, problem.PlaceOf(segment), problem.MarksOf(segment.NeededIn(problem)));

    private void Take(Segment segment, int place, long marks)
    {
        foreach (var offcut in problem.Patterns[segment.Pattern].Takes)
        {
            patternOf[offcut] = segment.Pattern;
        }

        taken[place] += marks;
    }
}
