using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;

namespace Scrapwright.Planning.Problems;

/// <summary>A glue-up that may be made for a panel part, in one of its modes.</summary>
/// <param name="Index">Its place in the problem.</param>
/// <param name="GiftIndex">Place of its gift in the problem.</param>
/// <param name="Part">The panel part.</param>
/// <param name="Needs">What it must measure.</param>
/// <param name="Slot">0 for the first glue-up of that mode, 1 for a second alike.</param>
/// <param name="WidestRough">Widest rough width the stations and clamps take.</param>
internal sealed record PanelCandidate(int Index, int GiftIndex, Part Part, PanelNeeds Needs, int Slot, Length WidestRough)
{
    internal PanelWish Wish => Part.Wish ?? new PanelWish(StripPattern.Free, [], 1, 12);

    internal bool IsStriped => Wish.IsStriped;

    /// <summary>Width that its strips must have beyond what each keeps in hand for itself.</summary>
    internal Length WidthBase => Needs.WidthBase(Needs.WidthDeviations(Needs.WidthRisk));

    internal int Yield => Needs.Blanks * Needs.Layers;
}
