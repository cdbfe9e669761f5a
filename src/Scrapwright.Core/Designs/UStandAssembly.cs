using System.Collections.Immutable;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Designs;

/// <summary>
/// Order of work of the stand with U-shaped sides. Its parts are sanded first, since laps are cut to the sanded thickness and inside faces
/// cannot be reached later; it is fitted on squares that are not sanded yet.
/// </summary>
internal static class UStandAssembly
{
    private static readonly ImmutableArray<string> Sides = [UStandParts.Left, UStandParts.Base, UStandParts.Right];
    private static readonly ImmutableArray<string> Stand = [.. Sides, UStandParts.Bar];

    internal static ImmutableArray<AssemblyStep> Steps(UStandSizes sizes, EdgeChoice edge, bool makes, Shop shop)
    {
        ImmutableArray<string> all = makes ? [.. Stand, SquareSet.Key] : Stand;
        ImmutableArray<string> edged = makes ? [UStandParts.Left, UStandParts.Right, SquareSet.Key] : [UStandParts.Left, UStandParts.Right];
        var unsanded = SquareSet.UnsandedHeight(sizes.Set, shop);
        return
        [
            new(Operation.Sand, Station.Sanding, Stand,
                "Sand both faces of all parts of the stand to the last grit, not across the ends. Keep the marks: pencil them on the edges.", []),
            new(Operation.CutLaps, Station.TableSaw, [UStandParts.Base, UStandParts.Bar],
                "Cut the slots across the outside of the bases {0} deep and into the upper edge of the bars {1} deep. Widen each until its mate goes in by hand.",
                [sizes.Laps.InBase, sizes.Laps.InBar]),
            new(Operation.CutMitres, Station.TableSaw, Sides,
                "Tilt the blade to 45° and mitre the ends that meet, marks outside; the outside keeps its length: uprights {0}, bases {1}.",
                [sizes.Upright, sizes.Base]),
            new(Operation.DryFit, Station.Bench, all,
                "Tape the sides up dry in the order of their marks and set them on the bars around the unsanded squares. Between the uprights it is {0}; the stack is {1} high now.",
                [sizes.Inner, unsanded]),
            .. edge.Steps(edged, makes ? "uprights and squares, stopping short of the mitres," : "the uprights, stopping short of the mitres,"),
            .. makes
                ? (ImmutableArray<AssemblyStep>)[new(Operation.Sand, Station.Sanding, [SquareSet.Key], "Sand both faces and the edges of the squares to the last grit.", [])]
                : [],
            new(Operation.Assemble, Station.Bench, Sides,
                "Lay the three parts of a side in a row, outside up, and tape over the mitres. Turn the row over, glue, fold it up and check that it is {0} between the uprights at top and bottom.",
                [sizes.Inner]),
            .. Keys(sizes),
            new(Operation.Assemble, Station.Bench, Stand,
                "Glue the sides into the slots of the bars. Bars and bases are flush on top; the bars stand {0} below the bases and are the feet.",
                [sizes.BarHeight - sizes.Board]),
            new(Operation.Finish, Station.Finishing, all, "Touch up the outside by hand with the last grit, then put finish on all sides.", []),
        ];
    }

    private static ImmutableArray<AssemblyStep> Keys(UStandSizes sizes) => sizes.Keys == 0
        ? []
        :
        [
            new(Operation.Assemble, Station.TableSaw, Sides,
                "Stand each glued side in a cradle at 45° and saw {0} deep across the corners. Glue a slip of {1} into each slot and trim it flush.",
                [sizes.KeyDepth, sizes.KeyThickness]),
        ];
}
