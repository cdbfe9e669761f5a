using System.Collections.Immutable;

namespace Scrapwright.Core.Finishing;

/// <summary>The grits to sand with, one after the other, or what is missing on the way.</summary>
public abstract record GritSequence
{
    private GritSequence()
    {
    }

    /// <summary>The fewest grits of those on hand; of equally many, those whose largest step is smallest.</summary>
    /// <param name="Grits">From coarse to fine.</param>
    public sealed record Found(ImmutableArray<Grit> Grits) : GritSequence
    {
        /// <summary>The marks: <c>P120, P150, P220</c>.</summary>
        public override string ToString() => Marks(Grits);
    }

    /// <summary>What is on hand does not get there without a step that is too large.</summary>
    /// <param name="Buy">The fewest grits of the table that bridge it; empty when none does, because the asked step is smaller than the table's own.</param>
    /// <param name="Grits">The whole way with them, from coarse to fine; empty when there is none.</param>
    public sealed record Gap(ImmutableArray<Grit> Buy, ImmutableArray<Grit> Grits) : GritSequence
    {
        /// <summary>The marks: <c>P80, P120, P180; to buy: P120</c>.</summary>
        public override string ToString() => Buy.IsEmpty ? "no grits that close together" : $"{Marks(Grits)}; to buy: {string.Join(", ", Buy)}";
    }

    /// <summary>The grits from one to another.</summary>
    /// <param name="first">The finest grit that still takes away what is on the surface; a coarser one on hand, not further off than a step, stands in for it.</param>
    /// <param name="last">The coarsest grit that is fine enough in the end; a finer one on hand, not further off than a step, stands in for it.</param>
    /// <param name="largestStep">Largest ratio of the mean particle sizes of two grits used one after the other. [1], above 1; anything else finds no way.</param>
    /// <param name="onHand">What there is, any order, both scales; the same mark twice counts once.</param>
    /// <remarks>Two grits on hand of the same particle size count as the first of them. Where nothing on hand stands in for the first or last grit, that has to be bought.</remarks>
    public static GritSequence From(Grit first, Grit last, double largestStep, ImmutableArray<Grit> onHand)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(last);
        var way = new GritWay(first, last, largestStep, onHand.IsDefault ? [] : onHand).Best();
        if (way.IsEmpty) return new Gap([], []);
        var marks = onHand.IsDefault ? [] : onHand.Select(g => g.Mark).ToHashSet(StringComparer.Ordinal);
        var buy = way.Where(g => !marks.Contains(g.Mark)).ToImmutableArray();
        return buy.IsEmpty ? new Found(way) : new Gap(buy, way);
    }

    private static string Marks(ImmutableArray<Grit> grits) => string.Join(", ", grits);
}
