namespace Scrapwright.Core.Calendar.Worth;

/// <summary>From how many pieces on what costs something once, and saves something with every piece, pays.</summary>
public static class BreakEven
{
    /// <summary>The least number of pieces whose savings come to the cost.</summary>
    /// <param name="cost">What it costs once, in any unit.</param>
    /// <param name="savedEach">What each piece saves, in the same unit.</param>
    /// <returns>The number, rounded up, from zero; null when a piece saves nothing, or the number is beyond all use.</returns>
    /// <remarks>n = cost / saved, [MakeOrBuyExample].</remarks>
    public static int? Pieces(decimal cost, decimal savedEach)
    {
        if (cost <= 0) return 0;
        if (savedEach <= 0) return null;
        var pieces = decimal.Ceiling(cost / savedEach);
        return pieces <= int.MaxValue ? (int)pieces : null;
    }
}
