using System.Collections.Immutable;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Core.Plans.Ideas;

/// <summary>Somebody who was given something last time, and what could be made for them this time.</summary>
/// <param name="Recipient">Who, as last time's list names them.</param>
/// <param name="LastTime">What they were given then; never empty.</param>
/// <param name="Choices">Gifts they have not had, the best first, with free labels; empty when nothing is left that they have not had.</param>
/// <param name="OnList">Labels of gifts for them and this occasion that are on the list already; nobody needs a second one.</param>
public sealed record AgainProposal(string Recipient, ImmutableArray<GivenGift> LastTime, ImmutableArray<AgainChoice> Choices, ImmutableArray<string> OnList);
