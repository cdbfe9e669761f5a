using System.Diagnostics;

namespace Scrapwright.Planning.Ideas;

/// <summary>The time of one question, shared out among the plans that answer it.</summary>
internal sealed class IdeaBudget(PlanLimits limits, CancellationToken cancellationToken)
{
    /// <summary>Below this a plan is not worth beginning. [s]</summary>
    private const double LeastSeconds = 0.3;

    private readonly Stopwatch clock = Stopwatch.StartNew();

    internal CancellationToken Token => cancellationToken;

    /// <summary>True while another plan may begin. Repeatable searches count work, each plan on its own, so they are only ended from outside.</summary>
    internal bool HasTime => !cancellationToken.IsCancellationRequested && (limits.Deterministic || clock.Elapsed.TotalSeconds < limits.Seconds);

    /// <summary>Limits of one plan of those that are still to be made.</summary>
    internal PlanLimits Share(int plansLeft) => limits with
    {
        Seconds = limits.Deterministic ? limits.Seconds : Math.Max(LeastSeconds, (limits.Seconds - clock.Elapsed.TotalSeconds) / Math.Max(1, plansLeft)),
    };
}
