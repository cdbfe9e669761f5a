namespace Scrapwright.Planning.Calendar.Advice;

/// <summary>How chances of a calendar are worked out.</summary>
public sealed record ChanceRules
{
    /// <summary>How many times the work is gone through; above zero. With 2,000 a chance is known to within about a point: binomial, two standard deviations at 95 %.</summary>
    public int Runs { get; init; } = 2000;

    /// <summary>How many times for each evening that is tried as a start; above zero, no more than <see cref="Runs"/> count. With 200 it is known to within about three points.</summary>
    public int StartRuns { get; init; } = 200;

    /// <summary>Seed of the drawn numbers.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>How far minutes stray from the plan, as a multiple of what tasks say themselves; 0 for not at all. [1]</summary>
    public double SpreadFactor { get; init; } = 1;

    /// <summary>The maker's pace, one draw for all tasks of a run: at best this multiple of all minutes. [1], at most 1; estimate</summary>
    public double QuickPaceFactor { get; init; } = 0.9;

    /// <summary>At worst this multiple. [1], at least 1; estimate</summary>
    public double SlowPaceFactor { get; init; } = 1.25;

    /// <summary>How often is often enough. [‰], 1 to 1000; nineteen times in twenty unless said otherwise</summary>
    public int AskedPerMille { get; init; } = 950;
}
