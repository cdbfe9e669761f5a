using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Designs;

/// <summary>Order of work of the stand of plates and rods: fitted on unsanded squares, sanded inside before gluing.</summary>
internal static class RodStandAssembly
{
    private static readonly ImmutableArray<string> Stand = ["plate", "rod"];

    internal static ImmutableArray<AssemblyStep> Steps(RodStandSizes sizes, EdgeChoice edge, bool makes, Shop shop)
    {
        ImmutableArray<string> faces = makes ? ["plate", SquareSet.Key] : ["plate"];
        ImmutableArray<string> all = makes ? ["plate", "rod", SquareSet.Key] : Stand;
        var unsanded = SquareSet.UnsandedHeight(sizes.Set, shop);
        return
        [
            new(Operation.CutRods, Station.TableSaw, ["rod"], "Cut the four rods to {0} against a stop.", [sizes.RodLength]),
            Drill(sizes, shop),
            new(Operation.DryFit, Station.Bench, all,
                "Put the stand together dry around the unsanded squares. The stack is {0} high now and must slide freely, with {1} above it.",
                [unsanded, sizes.Room - unsanded]),
            .. edge.Steps(faces, makes ? "plates and squares" : "the plates"),
            new(Operation.Sand, Station.Sanding, faces,
                "Sand all faces to the last grit. The inside faces of the plates cannot be reached once it is glued.", []),
            new(Operation.Assemble, Station.Bench, Stand,
                sizes.StoppedDepth is null
                    ? "Glue the rods: push each in from the inside face until it is flush outside. Check that the plates stand {0} apart at every corner."
                    : "Glue the rods: push each in from the inside face down to the bottom of its hole. Check that the plates stand {0} apart at every corner.",
                [sizes.Room]),
            new(Operation.Finish, Station.Finishing, all, "Touch up the outside by hand with the last grit, then put finish on all sides.", []),
        ];
    }

    private static AssemblyStep Drill(RodStandSizes sizes, Shop shop)
    {
        // Drilled before sanding, so a stopped hole starts deeper by what sanding takes off the inside face.
        var sand = shop.Allowances.Sand.Mean;
        if (sizes.StoppedDepth is { } depth)
        {
            return new(Operation.Drill, Station.DrillPress, ["plate"],
                "Set the stop to {0} and drill four holes of {1} into the inside face of each plate. Sanding takes {2} of the depth.",
                [depth + sand, sizes.Rod, sand]);
        }

        var pair = (sizes.PlateThickness + (sand * 2)) * 2;
        return pair <= shop.DrillPress.Stroke
            ? new(Operation.Drill, Station.DrillPress, ["plate"],
                "Tape the plates together, inside faces touching and fronts alike, on a fresh backing board. Drill four holes of {0} through both, {1} deep.",
                [sizes.Rod, pair])
            : new(Operation.Drill, Station.DrillPress, ["plate"],
                "Drill four holes of {0} through each plate from its inside face, on a fresh backing board, with fence and stop left as they are.",
                [sizes.Rod]);
    }
}
