using System.Collections.Immutable;

namespace Scrapwright.Core.Measures;

public readonly partial record struct Length
{
    /// <summary>The exact sum.</summary>
    public static Length operator +(Length left, Length right) => new(left.Picometres + right.Picometres);

    /// <summary>The exact difference.</summary>
    public static Length operator -(Length left, Length right) => new(left.Picometres - right.Picometres);

    /// <summary>The same length with the other sign.</summary>
    public static Length operator -(Length length) => new(-length.Picometres);

    /// <summary>The length taken several times, exactly.</summary>
    public static Length operator *(Length length, long times) => new(length.Picometres * times);

    /// <summary>The length taken several times, exactly.</summary>
    public static Length operator *(long times, Length length) => length * times;

    /// <summary>Whether left is shorter.</summary>
    public static bool operator <(Length left, Length right) => left.Picometres < right.Picometres;

    /// <summary>Whether left is shorter or equal.</summary>
    public static bool operator <=(Length left, Length right) => left.Picometres <= right.Picometres;

    /// <summary>Whether left is longer.</summary>
    public static bool operator >(Length left, Length right) => left.Picometres > right.Picometres;

    /// <summary>Whether left is longer or equal.</summary>
    public static bool operator >=(Length left, Length right) => left.Picometres >= right.Picometres;

    /// <summary>One of <paramref name="divisor"/> equal parts, rounded to a whole picometre. Parts that must add up come from <see cref="Split"/>.</summary>
    /// <param name="divisor">How many parts, above zero.</param>
    /// <param name="rounding">Where a value between two picometres goes.</param>
    /// <exception cref="ArgumentOutOfRangeException">The divisor is not positive.</exception>
    public Length Divide(long divisor, Rounding rounding)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(divisor);
        return new((long)RoundedDivision.Divide(Picometres, divisor, rounding));
    }

    /// <summary>How many whole times <paramref name="part"/> goes into this length, rounded down (below zero for a negative length).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The part is not positive.</exception>
    public long CountOf(Length part)
    {
        if (!part.IsPositive) throw new ArgumentOutOfRangeException(nameof(part), part, "The part is longer than zero.");
        return (long)RoundedDivision.Divide(Picometres, part.Picometres, Rounding.Down);
    }

    /// <summary>Parts that add up to this length exactly and differ by one picometre at most; the longer ones come first.</summary>
    /// <param name="n">How many parts, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than one part.</exception>
    public ImmutableArray<Length> Split(int n)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(n);
        var shorter = Divide(n, Rounding.Down);
        var longerCount = (Picometres - shorter.Picometres * n);
        var parts = ImmutableArray.CreateBuilder<Length>(n);
        for (var i = 0; i < n; i++) parts.Add(i < longerCount ? new(shorter.Picometres + 1) : shorter);
        return parts.MoveToImmutable();
    }

    /// <summary>The multiple of <paramref name="step"/> next to this length.</summary>
    /// <param name="step">The distance between marks, above zero.</param>
    /// <param name="rounding">Where a length between two marks goes.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step is not positive.</exception>
    /// <exception cref="OverflowException">The mark is out of range.</exception>
    public Length RoundTo(Length step, Rounding rounding)
    {
        if (!step.IsPositive) throw new ArgumentOutOfRangeException(nameof(step), step, "The step is longer than zero.");
        return new((long)(RoundedDivision.Divide(Picometres, step.Picometres, rounding) * step.Picometres));
    }
}
