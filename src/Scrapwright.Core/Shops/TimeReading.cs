namespace Scrapwright.Core.Shops;

/// <summary>How long a work took by the clock, beside what was planned for it. Setting up is not in it.</summary>
/// <param name="Date">The day.</param>
/// <param name="Operation">The kind of work.</param>
/// <param name="PlannedMinutes">The usual minutes for that work: from the shop's times and what there was to do, without any reading. [min], at least 1</param>
/// <param name="TookMinutes">What it took. [min], at least 1</param>
public sealed record TimeReading(DateOnly Date, Operation Operation, int PlannedMinutes, int TookMinutes)
{
    /// <summary>What the pace depends on besides the operation: <see cref="ByHand"/>, the key of a finish, or empty.</summary>
    public string Setting { get; init; } = "";

    /// <summary>Anything; empty for nothing.</summary>
    public string Note { get; init; } = "";

    /// <summary>The setting of a machine's work that is done with hand tools.</summary>
    public const string ByHand = "by-hand";
}
