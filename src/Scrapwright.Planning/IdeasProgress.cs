using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Ideas;

namespace Scrapwright.Planning;

/// <summary>Where a search for ideas stands.</summary>
/// <param name="Done">How much has been tried.</param>
/// <param name="Total">How much there is to try, as far as is known.</param>
/// <param name="Title">What was tried last.</param>
/// <param name="Proposal">The proposal that came of it; null when none did.</param>
/// <param name="Plan">The audited plan under it; null when there is none.</param>
public sealed record IdeasProgress(int Done, int Total, string Title, Proposal? Proposal, Plan? Plan);
