namespace Scrapwright.Planning.Cutting;

/// <summary>How much work a search for a board may do. No wall clock in it: same problem and limits, same outcome.</summary>
internal sealed record BoardLimits
{
    /// <summary>Most times two pieces are put together.</summary>
    internal long MostPairs { get; init; } = 6_000_000_000;

    /// <summary>Most pieces remembered.</summary>
    internal int MostBuilds { get; init; } = 2_000_000;

    /// <summary>Most steps of improving the bound by prices on copies, and most table entries looked at in doing so.</summary>
    internal (int Rounds, long Steps) Prices { get; init; } = (200, 20_000_000_000);

    /// <summary>Most places along one side where a cut can be; with more, sizes are rounded, parts up and the board down.</summary>
    internal int MostPlaces { get; init; } = 3000;

    /// <summary>For the planner, where an answer is wanted at once.</summary>
    internal static BoardLimits Quick { get; } = new() { MostPairs = 50_000_000, MostBuilds = 60_000, Prices = (40, 400_000_000), MostPlaces = 500 };
}
