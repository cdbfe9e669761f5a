using System.Collections.Immutable;

namespace Scrapwright.Core.Plans.Ideas;

/// <summary>Ideas, worked out by planning: of each there was a plan that passed the audit.</summary>
public sealed record IdeasAnswer
{
    /// <summary>What was asked.</summary>
    public required IdeasQuestion Question { get; init; }

    /// <summary>Labels of the gifts on the list that stay made.</summary>
    public ImmutableArray<string> Planned { get; init; } = [];

    /// <summary>What is wanted and not made: labels of gifts on the list, or what the gifts are when there is no list.</summary>
    public ImmutableArray<string> Unmade { get; init; } = [];

    /// <summary>What can be made, the best first; see <see cref="IdeaRanks.ProposalRule"/>.</summary>
    public ImmutableArray<Proposal> Proposals { get; init; } = [];

    /// <summary>Titles of what was looked at and cannot be made, not even once; proven.</summary>
    public ImmutableArray<string> Impossible { get; init; } = [];

    /// <summary>Where the offcut serves, the best first; see <see cref="IdeaRanks.UseRule"/>.</summary>
    public ImmutableArray<OffcutUse> Uses { get; init; } = [];

    /// <summary>For an offcut that serves nowhere: why not, part by part, as far as its sizes tell.</summary>
    public ImmutableArray<Reason> Reasons { get; init; } = [];

    /// <summary>For an offcut that serves nowhere alone: labels of boards that would serve, glued face to face from it and another that serves nowhere; empty when none would.</summary>
    public ImmutableArray<string> Boards { get; init; } = [];

    /// <summary>Every purchase that was tried, the best first; see <see cref="IdeaRanks.PurchaseRule"/>. Those that unlock nothing stand at the end.</summary>
    public ImmutableArray<Purchase> Purchases { get; init; } = [];

    /// <summary>True when the proposals are designs that the recipient has had, because nothing else can be made.</summary>
    public bool IsHadBefore { get; init; }

    /// <summary>What the time was too short for; empty when everything was tried.</summary>
    public ImmutableArray<string> NotTried { get; init; } = [];
}
