using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using static Scrapwright.Core.Measures.Length;

namespace Scrapwright.Core.Tests.Plans;

/// <summary>Two small plans made by hand.</summary>
internal static class ExamplePlans
{
    private static readonly Part Square = new()
    {
        Key = "square",
        Title = "square",
        Kind = PartKind.Panel,
        Length = FromInches(4),
        Width = FromInches(4),
        Thickness = FromInches(1, 4),
        Count = 3,
        Wish = new PanelWish(StripPattern.Mirrored, ["black-walnut"], 2, 8),
    };

    private static readonly Part Rail = new()
    {
        Key = "rail",
        Title = "rail",
        Kind = PartKind.Solid,
        Length = FromInches(5),
        Width = FromInches(7, 4),
        Thickness = FromInches(1, 2),
        Count = 2,
        Holes = [new Hole(FromInches(1), FromInches(1), FromInches(7, 16), FromInches(1, 2), true)],
    };

    private static readonly Part Rod = new()
    {
        Key = "rod",
        Title = "rod",
        Kind = PartKind.Rod,
        Length = FromInches(6),
        Width = FromInches(1, 2),
        Thickness = FromInches(1, 2),
        Count = 2,
    };

    private static readonly Product Tray = new()
    {
        Family = "tray",
        Summary = "a tray",
        Parts = [Square, Rail, Rod],
        Runs = [new GrainRun("A", [new PartRef("rail", 1, "A1"), new PartRef("rail", 2, "A2")])],
        Assembly =
        [
            new AssemblyStep(Operation.CutRods, Station.TableSaw, ["rod"], "Cut.", []),
            new AssemblyStep(Operation.Drill, Station.DrillPress, ["rail"], "Drill.", []),
            new AssemblyStep(Operation.Sand, Station.Sanding, ["square", "rail"], "Sand.", []),
            new AssemblyStep(Operation.Assemble, Station.Bench, ["square", "rail", "rod"], "Assemble.", []),
        ],
        Outside = (FromInches(5), FromInches(4), FromInches(6)),
    };

    private static readonly Offcut Walnut = Cut("W1", "black-walnut", 42, 11, 28);

    /// <summary>The gifts of <see cref="Full"/> with their products.</summary>
    public static ImmutableArray<GiftDesign> Designs { get; } =
    [
        new(new Gift { Label = "Elm", Design = "tray", Circle = "club", Priority = 1 }, new DesignOutcome.Derived(Tray)),
        new(new Gift { Label = "Big", Design = "tray", Circle = "club" }, new DesignOutcome.Derived(Tray with { Parts = [Square with { Count = 12 }], Runs = [] })),
        new(new Gift { Label = "Odd", Design = "tray" }, new DesignOutcome.Refused([new DesignProblem("count", "0", "1 to 24")])),
    ];

    /// <summary>Every operation once: three ways of milling, a defect cut out, layers, a spare blank, a run of two, rods.</summary>
    public static Plan Full { get; } = MakeFull();

    /// <summary>Two striped squares of the built-in design from four offcuts.</summary>
    public static Plan Squares { get; } = MakeSquares();

    /// <summary>The same with one strip from a board that is glued face to face from two thin offcuts, T1 and T2.</summary>
    public static Plan Faced { get; } = MakeFaced();

    private static Offcut Cut(string label, string species, int lengthQuarters, int widthEighths, int thicknessThirtySeconds) => new()
    {
        Label = label,
        Species = species,
        Length = FromInches(lengthQuarters, 4),
        Width = FromInches(widthEighths, 8),
        Thickness = FromInches(thicknessThirtySeconds, 32),
    };

    private static Plan MakeFull()
    {
        var request = new PlanRequest
        {
            Workshop = "Test bench",
            Pile =
            [
                Walnut,
                Cut("M1", "sugar-maple", 40, 24, 28) with { Cup = FromInches(1, 32), Faces = Faces.OneSurfaced },
                Cut("W2", "black-walnut", 96, 11, 28) with { Faces = Faces.BothSurfaced, Defects = [new Defect(DefectKind.Knot, FromInches(11), FromInches(12))] },
                Cut("B1", "black-cherry", 120, 20, 28) with { Bow = FromInches(1, 16) },
                Cut("X", "white-oak", 80, 24, 28) with { Count = 2, Twist = FromInches(1, 16) },
            ],
            Gifts = [.. Designs.Select(d => d.Gift)],
        };
        return new PlanBench(request, Designs)
            .Crosscut(Operation.RoughCrosscut, "B1", ("B1-1", FromInches(14)), ("B1-2", FromInches(127, 8)))
            .Rip(Operation.RoughRip, "M1", ("M1-1", FromInches(11, 8)), ("M1-2", FromInches(11, 8)), ("M1-3", FromInches(1, 8)))
            .FaceJoint("W1", "M1-1", "M1-2", "B1-1")
            .FacePlane("W1", "M1-1", "M1-2", "B1-1")
            .EdgeJoint(("W1", 2), ("M1-1", 2), ("M1-2", 2), ("W2", 2), ("B1-1", 1))
            .Rip(Operation.Rip, "B1-1", ("B1-1a", FromInches(15, 8)), ("B1-1b", FromInches(15, 32)))
            .EdgeJoint(("B1-1a", 1))
            .Crosscut(Operation.CrosscutStrips, "W2", ("W2-1", FromInches(10)), ("W2-2", FromInches(3, 4)), ("W2-3", FromInches(1)), ("W2-4", FromInches(95, 8)))
            .Defect("W2-3")
            .PlaneToThickness(FromInches(26, 32) - Small("M1"), "W1", "W2-1")
            .PlaneToThickness(FromInches(1, 2) + FromInches(1, 64), "B1-1a")
            .Glue("G1", "Elm", Square, 2, 2, "W1", "M1-1", "W2-1", "M1-2")
            .FlattenPanel("G1")
            .Resaw("G1", 2)
            .PlanePanel(Square, "G1/1", "G1/2")
            .TrimWidth(("G1/1", Square.Width), ("G1/2", Square.Width), ("B1-1a", Rail.Width))
            .Crosscut(Operation.CrosscutBlanks, "G1/1", ("Elm-square1", Square.Length), ("Elm-square2", Square.Length))
            .Crosscut(Operation.CrosscutBlanks, "G1/2", ("Elm-square3", Square.Length), ("G1/2-spare", Square.Length))
            .Board("Elm", "A", "B1-1a")
            .Crosscut(Operation.CrosscutBlanks, "B1-1a", ("Elm-A1", Rail.Length), ("Elm-A2", Rail.Length))
            .Assemble(
                "Elm",
                new RodUse("R1", "paper-birch", Rod.Width, FromInches(36), true, ["Elm-rod1", "Elm-rod2"], Zero),
                new("square", 1, "Elm-square1"), new("square", 2, "Elm-square2"), new("square", 3, "Elm-square3"),
                new("rail", 1, "Elm-A1"), new("rail", 2, "Elm-A2"), new("rod", 1, "Elm-rod1"), new("rod", 2, "Elm-rod2"))
            .Build();

        // Cup left in a lane of 1 3/8 in out of 3 in, by the square of the share; the maple is the thinnest.
        Length Small(string label) => Scrapwright.Core.Milling.Flattening.HollowAfterCut(request.Pile.First(o => o.Label == label).Cup, FromInches(3), FromInches(11, 8));
    }

    private static Plan MakeSquares()
    {
        var gift = new Gift
        {
            Label = "Ida",
            Design = "striped-squares",
            Options = ImmutableSortedDictionary<string, string>.Empty.Add("count", "2"),
        };
        var request = new PlanRequest
        {
            Pile =
            [
                Walnut,
                Cut("W2", "black-walnut", 40, 11, 28),
                Cut("M1", "sugar-maple", 40, 11, 28),
                Cut("M2", "sugar-maple", 48, 11, 30),
            ],
            Gifts = [gift],
        };
        var designs = GiftDesigns.Derive(request.Gifts, request.Designs, request.Shop);
        var part = ((DesignOutcome.Derived)designs[0].Outcome).Product.Parts[0];
        return new PlanBench(request, designs)
            .FaceJoint("W1", "W2", "M1", "M2")
            .FacePlane("W1", "W2", "M1", "M2")
            .EdgeJoint(("W1", 2), ("W2", 2), ("M1", 2), ("M2", 2))
            .PlaneToThickness(FromInches(26, 32), "M2")
            .Glue("G1", "Ida", part, 2, 1, "W1", "M1", "W2", "M2")
            .FlattenPanel("G1")
            .PlanePanel(part, "G1")
            .TrimWidth(("G1", part.Width))
            .Crosscut(Operation.CrosscutBlanks, "G1", ("Ida-1", part.Length), ("Ida-2", part.Length))
            .Assemble("Ida", null, new(part.Key, 1, "Ida-1"), new MadePart(part.Key, 2, "Ida-2"))
            .Build();
    }

    private static Plan MakeFaced()
    {
        var request = Squares.Request with
        {
            Pile = [Cut("T1", "black-walnut", 42, 11, 15), Cut("T2", "black-walnut", 40, 12, 16), .. Squares.Request.Pile.Skip(1)],
        };
        var designs = GiftDesigns.Derive(request.Gifts, request.Designs, request.Shop);
        var part = ((DesignOutcome.Derived)designs[0].Outcome).Product.Parts[0];
        return new PlanBench(request, designs)
            .FaceJoint("T1", "T2")
            .GlueFaces("T1", "T2", 3)
            .FaceJoint("T1+T2", "W2", "M1", "M2")
            .FacePlane("T1+T2", "W2", "M1", "M2")
            .EdgeJoint(("T1+T2", 2), ("W2", 2), ("M1", 2), ("M2", 2))
            .PlaneToThickness(FromInches(26, 32), "T1+T2", "M2")
            .Glue("G1", "Ida", part, 2, 1, "T1+T2", "M1", "W2", "M2")
            .FlattenPanel("G1")
            .PlanePanel(part, "G1")
            .TrimWidth(("G1", part.Width))
            .Crosscut(Operation.CrosscutBlanks, "G1", ("Ida-1", part.Length), ("Ida-2", part.Length))
            .Assemble("Ida", null, new(part.Key, 1, "Ida-1"), new MadePart(part.Key, 2, "Ida-2"))
            .Build();
    }
}
