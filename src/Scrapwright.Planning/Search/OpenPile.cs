using Scrapwright.Core.Measures;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>What is still free in the pile while a placement grows: the pattern each offcut has been given and the room left in its lanes, on the solver's grid.</summary>
internal sealed class OpenPile
{
    private readonly Problem problem;
    private readonly int[] patternOf;
    private readonly Dictionary<(int Pattern, int Lane, int Run), long> used;

    internal OpenPile(Problem problem)
    {
        this.problem = problem;
        patternOf = [.. Enumerable.Repeat(-1, problem.Offcuts.Length)];
        used = [];
    }

    private OpenPile(OpenPile other)
    {
        problem = other.problem;
        patternOf = [.. other.patternOf];
        used = new(other.used);
    }

    internal OpenPile Copy() => new(this);

    /// <summary>True when a length can still be taken there.</summary>
    internal bool HasRoom(Segment segment, Length needed)
    {
        var pattern = problem.Patterns[segment.Pattern];
        var chosen = patternOf[pattern.OffcutIndex];
        return (chosen < 0 || chosen == segment.Pattern)
            && UsedIn(segment) + problem.Lengths.Up(needed) <= problem.Lengths.Down(pattern.Runs[segment.Run].Length);
    }

    /// <summary>Takes it.</summary>
    internal void Take(Segment segment, Length needed)
    {
        patternOf[problem.Patterns[segment.Pattern].OffcutIndex] = segment.Pattern;
        used[(segment.Pattern, segment.Lane, segment.Run)] = UsedIn(segment) + problem.Lengths.Up(needed) + problem.Lengths.Up(problem.Shop.TableSaw.Kerf);
    }

    private long UsedIn(Segment segment) => used.GetValueOrDefault((segment.Pattern, segment.Lane, segment.Run));
}
