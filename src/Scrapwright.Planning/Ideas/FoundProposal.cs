using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Ideas;

namespace Scrapwright.Planning.Ideas;

/// <summary>A proposal and the audited plan under it.</summary>
internal sealed record FoundProposal(IdeaVariant? Variant, Proposal Proposal, Plan Plan);
