namespace Scrapwright.Client.Api;

/// <summary>Where a planning run stands.</summary>
public enum RunState
{
    /// <summary>There was no run yet.</summary>
    Idle,

    /// <summary>Searching.</summary>
    Running,

    /// <summary>Ended by itself: there is a plan, or no gift can be made and <see cref="RunStatus.Unmade"/> says why.</summary>
    Done,

    /// <summary>Ended by the maker; <see cref="RunStatus.HasPlan"/> tells whether a plan had been found.</summary>
    Cancelled,

    /// <summary>Ended by a fault; <see cref="RunStatus.Message"/> says what.</summary>
    Failed,
}
