namespace Scrapwright.Core.Finishing;

/// <summary>Least and most of a figure, where makers, sources or woods differ. Whole numbers; the unit stands in the name of what holds it. <c>default</c> is 0.</summary>
public readonly record struct Band
{
    // No shop comes near; it keeps a plan with absurd sizes from overflowing: our own choice.
    private const double Limit = 1e8;

    /// <summary>A band.</summary>
    /// <param name="least">Zero or more.</param>
    /// <param name="most">At least <paramref name="least"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Below zero, or the wrong way round.</exception>
    public Band(int least, int most)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(least);
        ArgumentOutOfRangeException.ThrowIfLessThan(most, least);
        (Least, Most) = (least, most);
    }

    /// <summary>The lowest figure.</summary>
    public int Least { get; }

    /// <summary>The highest figure.</summary>
    public int Most { get; }

    /// <summary>Whether both are the same.</summary>
    public bool IsOne => Least == Most;

    /// <summary>The band from the lower of two least to the higher of two most.</summary>
    public Band Or(Band other) => new(Math.Min(Least, other.Least), Math.Max(Most, other.Most));

    /// <summary>The sum of the ends.</summary>
    public static Band operator +(Band left, Band right) => new(left.Least + right.Least, left.Most + right.Most);

    /// <summary>The figures as people write them: <c>30–60</c>, or <c>24</c> when both are the same.</summary>
    public override string ToString() => IsOne ? $"{Least}" : $"{Least}–{Most}";

    /// <summary>A band from floating figures: the lower rounded down, the upper up, to whole steps; a billionth past one is a slip of the arithmetic. Above a hundred million nothing is counted. Both our own choice.</summary>
    internal static Band Around(double least, double most, int step = 1) =>
        new(step * (int)Math.Floor((Math.Min(least, Limit) / step) + 1e-9), step * (int)Math.Ceiling((Math.Min(most, Limit) / step) - 1e-9));
}
