using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Designs;

/// <summary>
/// Geometry of the stand of two U-shaped sides on two cross bars; docs/designs.md has the figure. The boards of a U have their wide faces
/// towards the stack: the bases lie flat, the bars stand on edge under them, and where they cross each gives half the board's thickness.
/// </summary>
internal sealed record UStandSizes(
    StackedSet Set, Length Clearance, Length HeadRoom, Length Depth, Length Board, Length SetIn,
    Length BarHeight, Length BarThickness, Length BarInset, Length Fit, int Keys, Length KeyThickness)
{
    /// <summary>Between the uprights.</summary>
    internal Length Inner => Set.Size + (Clearance * 2);

    /// <summary>Base over its long, outer side.</summary>
    internal Length Base => Inner + (Board * 2);

    /// <summary>Upright over its long, outer side.</summary>
    internal Length Upright => Board + Set.Height + HeadRoom;

    /// <summary>A bar is as long as the stack is deep.</summary>
    internal Length Bar => Set.Size;

    /// <summary>Slot in a base, along the base.</summary>
    internal Length BaseOpening => BarThickness + Fit;

    /// <summary>Slot in a bar, along the bar.</summary>
    internal Length BarOpening => Depth + Fit;

    /// <summary>Depth of the slots: together the thickness of the boards, so that bars and bases are flush on top.</summary>
    internal (Length InBase, Length InBar) Laps => Board.Split(2) is [var first, var second] ? (first, second) : default;

    /// <summary>Near side of the first slot from a base's end; the second lies the same from the other end.</summary>
    internal Length BaseSlot => Board + BarInset;

    /// <summary>Wood between the slots of a base.</summary>
    internal Length BetweenBars => Base - ((BaseSlot + BaseOpening) * 2);

    /// <summary>Wood between the slots of a bar.</summary>
    internal Length BetweenSides => Bar - ((SetIn + BarOpening) * 2);

    /// <summary>Depth of a key's slot, square into the corner; less than the mitre is long (1.41 times the thickness).</summary>
    internal Length KeyDepth => Board;

    /// <summary>Middles of the keys from the front edge of the boards, evenly spaced, the last picometres in the last gap.</summary>
    internal ImmutableArray<Length> KeyMiddles
    {
        get
        {
            var gaps = Depth.Split(Keys + 1);
            return [.. Enumerable.Range(1, Keys).Select(i => Length.Sum(gaps.Take(i)))];
        }
    }

    internal (Length Along, Length Across, Length Up) Outside => (Base, Bar, BarHeight + Set.Height + HeadRoom);

    /// <summary>From below across the outer face of a base.</summary>
    internal ImmutableArray<Notch> BaseNotches =>
    [
        new(BaseSlot, BaseOpening, Laps.InBase, OnUpperEdge: false) { AcrossFace = true },
        new(Base - BaseSlot - BaseOpening, BaseOpening, Laps.InBase, OnUpperEdge: false) { AcrossFace = true },
    ];

    /// <summary>From above into the upper edge of a bar.</summary>
    internal ImmutableArray<Notch> BarNotches =>
    [
        new(SetIn, BarOpening, Laps.InBar, OnUpperEdge: true),
        new(Bar - SetIn - BarOpening, BarOpening, Laps.InBar, OnUpperEdge: true),
    ];
}
