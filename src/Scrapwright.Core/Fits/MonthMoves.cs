using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Fits;

/// <summary>What one month does to both sides of a fit. The first term of the opening is kept as a strain, since its size is what the maker may change.</summary>
internal readonly record struct MonthMoves(
    int Month, double MoisturePercent, double FirstLow, double FirstHigh, double RestLeastMm, double RestMostMm, double HeldLeastMm, double HeldMostMm)
{
    internal static MonthMoves Of(FitSides sides, int month, double fromPercent, double toPercent)
    {
        var first = sides.Holder[0].Strain(fromPercent, toPercent);
        var rest = Sum(sides.Holder.Skip(1), fromPercent, toPercent);
        var held = Sum(sides.Held, fromPercent, toPercent);
        return new(month, toPercent, first.Low, first.High, rest.LeastMm, rest.MostMm, held.LeastMm, held.MostMm);
    }

    /// <summary>The month for an opening of that size when fitted.</summary>
    internal FitMonth At(Length opening, FitSides sides)
    {
        // What the other terms take from the opening is the same whatever its size.
        var firstMm = (opening - sides.Opening + sides.Holder[0].Size).Millimetres;
        var narrow = MovedLength.After(opening, Math.Min(firstMm * FirstLow, firstMm * FirstHigh) + RestLeastMm, Rounding.Down);
        var wide = MovedLength.After(opening, Math.Max(firstMm * FirstLow, firstMm * FirstHigh) + RestMostMm, Rounding.Up);
        var large = MovedLength.After(sides.HeldSize, HeldMostMm, Rounding.Up);
        var small = MovedLength.After(sides.HeldSize, HeldLeastMm, Rounding.Down);
        return new(Month, MoisturePercent, narrow, large, narrow - large, wide - small);
    }

    private static (double LeastMm, double MostMm) Sum(IEnumerable<MovingTerm> terms, double fromPercent, double toPercent)
    {
        var changes = terms.Select(t => t.ChangeMm(fromPercent, toPercent)).ToArray();
        return (changes.Sum(c => c.LeastMm), changes.Sum(c => c.MostMm));
    }
}
