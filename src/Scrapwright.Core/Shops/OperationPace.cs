namespace Scrapwright.Core.Shops;

/// <summary>How long the maker takes for one kind of work, beside the usual minutes.</summary>
/// <param name="Operation">The kind of work.</param>
/// <param name="Setting">What it depends on besides, as in <see cref="TimeReading.Setting"/>.</param>
/// <param name="Readings">How many readings it is from. [1], from zero</param>
/// <param name="PerMille">Of a thousand usual minutes, how many it takes. [‰], above zero; rounded to the nearest</param>
/// <param name="LeastPerMille">Of a thousand of its own minutes, how many when all goes well. [‰], at most 1000</param>
/// <param name="MostPerMille">The same when it does not. [‰], at least 1000</param>
public sealed record OperationPace(Operation Operation, string Setting, int Readings, int PerMille, int LeastPerMille, int MostPerMille)
{
    // Nearer than this to the usual is no news: our own choice.
    private const int NewsPerMille = 50;

    /// <summary>True when it is worth telling: a twentieth or more beside the usual.</summary>
    public bool IsNews => Math.Abs(PerMille - 1000) >= NewsPerMille;

    /// <summary>True when two paces are so far apart that a calendar would show it: by a twentieth of the one or more.</summary>
    /// <param name="other">The other.</param>
    public bool IsFarFrom(OperationPace other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Math.Abs(PerMille - other.PerMille) * 1000L >= (long)NewsPerMille * PerMille;
    }
}
