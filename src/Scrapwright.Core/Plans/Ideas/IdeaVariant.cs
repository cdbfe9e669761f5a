using System.Collections.Immutable;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Core.Plans.Ideas;

/// <summary>A design in one size: something that a pile may give.</summary>
/// <param name="Design">Key of the design.</param>
/// <param name="Step">How it differs from the design.</param>
/// <param name="Title">What it is, in the shop's unit: <c>4 striped squares, 4 in</c>.</param>
/// <param name="Options">Options that differ from the design's, by parameter key, as text.</param>
public sealed record IdeaVariant(string Design, IdeaStep Step, string Title, ImmutableSortedDictionary<string, string> Options)
{
    /// <summary>A gift of it.</summary>
    /// <param name="label">Label of the gift.</param>
    /// <param name="priority">Its priority, 1 to 9.</param>
    public Gift ToGift(string label, int priority) => new() { Label = label, Design = Design, Options = Options, Priority = priority };
}
