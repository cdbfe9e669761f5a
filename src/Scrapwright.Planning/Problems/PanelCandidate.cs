using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Plans.Choices;

namespace Scrapwright.Planning.Problems;

/// <summary>A glue-up that may be made for a panel part, in one of its modes.</summary>
/// <param name="Index">Its place in the problem.</param>
/// <param name="GiftIndex">Place of its gift, or of the first of its gifts, in the problem.</param>
/// <param name="Part">The panel part.</param>
/// <param name="Needs">What it must measure.</param>
/// <param name="Slot">0 for the first glue-up of that mode, 1 for a second alike.</param>
/// <param name="WidestRough">Widest rough width the stations and clamps take.</param>
internal sealed record PanelCandidate(int Index, int GiftIndex, Part Part, PanelNeeds Needs, int Slot, Length WidestRough)
{
    /// <summary>The glue-up it is already; null while it is open to the search.</summary>
    internal DoneGlueUp? Done { get; init; }

    /// <summary>The gifts it serves, with how many copies each gets: of one gift as many as it gives.</summary>
    internal ImmutableArray<PanelShare> Shares { get; init; } = [new(GiftIndex, Part, Needs.Blanks * Needs.Layers)];

    internal bool IsShared => Shares.Length > 1;

    internal PanelWish Wish => Part.Wish ?? new PanelWish(StripPattern.Free, [], 1, 12);

    /// <summary>True when its strips are to lie opposite their sisters.</summary>
    internal bool IsBookMatchWished => Wish.Pattern == StripPattern.BookMatched;

    internal bool IsStriped => Wish.IsStriped;

    internal int Yield => Needs.Blanks * Needs.Layers;

    internal bool IsFor(int gift) => Shares.Any(s => s.GiftIndex == gift);

    internal bool IsFor(int gift, string part) => Shares.Any(s => s.GiftIndex == gift && s.Part.Key == part);

    /// <summary>Copies of a gift's part that come from it; 0 when none.</summary>
    internal int YieldFor(int gift, string part) => Shares.Where(s => s.GiftIndex == gift && s.Part.Key == part).Sum(s => s.Count);
}
