using System.Collections.Immutable;

namespace Scrapwright.Planning.Cutting;

/// <summary>What came of cutting bars.</summary>
internal abstract record BarOutcome
{
    private BarOutcome()
    {
    }

    /// <summary>Every piece is cut.</summary>
    /// <param name="Bars">The bars.</param>
    /// <param name="Cost">Sum of their prices.</param>
    /// <param name="Bound">No way of cutting costs less; equal to the cost when the way is proven best.</param>
    internal sealed record Cut(ImmutableArray<CutBar> Bars, long Cost, long Bound) : BarOutcome
    {
        /// <summary>Whether no cheaper way exists.</summary>
        internal bool IsProven => Cost == Bound;
    }

    /// <summary>The bars do not hold the pieces.</summary>
    /// <param name="TooLong">Indices of the items longer than every bar; empty when there are only too few bars.</param>
    /// <param name="IsProven">False when the search ended before it could tell.</param>
    internal sealed record Short(ImmutableArray<int> TooLong, bool IsProven) : BarOutcome;
}
