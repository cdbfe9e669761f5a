using Scrapwright.Client.Api;

namespace Scrapwright.Web.Planning;

/// <summary>What came of asking for a run.</summary>
internal abstract record StartOutcome
{
    private StartOutcome()
    {
    }

    /// <summary>It goes on now.</summary>
    internal sealed record Started(RunStatus Status) : StartOutcome;

    /// <summary>Another one goes on.</summary>
    internal sealed record Busy(RunStatus Status) : StartOutcome;

    /// <summary>There are no gifts.</summary>
    internal sealed record NothingToPlan : StartOutcome;
}
