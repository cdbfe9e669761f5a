using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Sheets;

/// <summary>A plan put together by hand, with every kind of step, drawing and reason that sheets show. Not audited: the sheets only draw what it says.</summary>
public sealed class SamplePlan
{
    private static readonly string[] Woods = ["black-walnut", "sugar-maple", "black-cherry", "white-oak", "yellow-poplar", "padauk", "white-ash", "purpleheart", "american-beech"];
    private readonly Shop shop;
    private readonly string prefix;
    private readonly List<Offcut> pile = [];
    private readonly List<Step> steps = [];

    private SamplePlan(Shop shop, string prefix) => (this.shop, this.prefix) = (shop, prefix);

    public static Length In(int numerator, int denominator = 1) => Length.FromInches(numerator, denominator);

    /// <summary>A plan of so many sets of squares, each from one glue-up of so many strips, with a rod stand, a U stand and a gift that cannot be made.</summary>
    public static (Plan Plan, ImmutableArray<GiftDesign> Designs) Build(Shop shop, int glueUps = 2, int strips = 6, string prefix = "W", string name = "squares")
    {
        var sample = new SamplePlan(shop, prefix);
        return sample.Make(glueUps, strips, name);
    }

    public static Product Squares(int count) => new()
    {
        Family = "striped-squares",
        Summary = $"{count} striped squares, 4 in",
        Parts = [new Part { Key = "square", Title = "square", Kind = PartKind.Panel, Length = In(4), Width = In(4), Thickness = In(3, 8), Count = count, Wish = new(StripPattern.Contrast, [], 2, 9) }],
        Outside = (In(4), In(4), In(3, 8) * count),
        Assembly =
        [
            new(Operation.TreatEdges, Station.Router, ["square"], "Break every edge by {0}.", [In(1, 32)]),
            new(Operation.Sand, Station.Sanding, ["square"], "Sand both faces from 120 to 240.", []),
            new(Operation.Finish, Station.Finishing, ["square"], "Wipe on oil, wipe off after ten minutes.", []),
        ],
        Cautions = ["On things for food: let the finish cure fully before use."],
    };

    public static Part Plate { get; } = new()
    {
        Key = "plate",
        Title = "plate",
        Kind = PartKind.Panel,
        Length = In(5),
        Width = In(5),
        Thickness = In(3, 8),
        Count = 2,
        Holes =
        [
            new(In(1, 2), In(1, 2), In(1, 4), In(3, 8), true), new(In(9, 2), In(1, 2), In(1, 4), In(3, 8), true),
            new(In(1, 2), In(9, 2), In(1, 4), In(3, 8), true), new(In(9, 2), In(9, 2), In(1, 4), In(3, 8), true),
        ],
    };

    public static Part Bar { get; } = new()
    {
        Key = "bar",
        Title = "cross bar",
        Kind = PartKind.Solid,
        Length = In(4),
        Width = In(3, 4),
        Thickness = In(3, 8),
        Count = 2,
        Notches = [new(In(1, 2), In(1), In(3, 16), true), new(In(5, 2), In(1), In(3, 16), true)],
    };

    public static Part Base { get; } = new()
    {
        Key = "base",
        Title = "base",
        Kind = PartKind.Solid,
        Length = In(39, 8),
        Width = In(1),
        Thickness = In(3, 8),
        Count = 2,
        Mitres = MitredEnds.Both,
    };

    public static Product Stand { get; } = new()
    {
        Family = "rod-stand",
        Summary = "stand for 4 squares with corner rods and U sides",
        Parts = [Plate, Bar, Base, new Part { Key = "rod", Title = "corner rod", Kind = PartKind.Rod, Length = In(5, 2), Width = In(1, 4), Thickness = In(1, 4), Count = 4 }],
        Runs = [new("A", [new("base", 1, "A2")]), new("B", [new("base", 2, "B2")])],
        Joints = [new("rod in through hole", ["plate", "rod"], 4, [new("hole", In(1, 4)), new("gap to the stack", In(1, 16))])],
        Outside = (In(5), In(5), In(3)),
        Assembly =
        [
            new(Operation.CutRods, Station.TableSaw, ["rod"], "Cut four rods {0} long.", [In(5, 2)]),
            new(Operation.Drill, Station.DrillPress, ["plate"], "Drill through both plates together, inside faces up.", []),
            new(Operation.DryFit, Station.Bench, ["plate", "rod"], "Fit on unsanded squares; the stack is {0} high now.", [In(26, 16)]),
            new(Operation.Assemble, Station.Bench, ["plate", "rod"], "Push the rods in from the inside face and glue.", []),
        ],
        Cautions = ["Parts are short: clamp them, fingers out of the line of the blade."],
    };

    private (Plan, ImmutableArray<GiftDesign>) Make(int glueUps, int strips, string name)
    {
        var gifts = ImmutableArray.CreateBuilder<Gift>();
        var designs = ImmutableArray.CreateBuilder<GiftDesign>();
        var made = ImmutableArray.CreateBuilder<MadeGift>();
        var panels = new List<(GlueUp GlueUp, Piece Panel)>();
        var allStrips = new List<(Offcut Offcut, Piece Piece)>();
        for (var g = 0; g < glueUps; g++)
        {
            var gift = new Gift { Label = $"{name}-{g + 1}", Recipient = "Aunt of the garden gate", Design = "striped-squares", Due = new DateOnly(2027, 6, 20) };
            gifts.Add(gift);
            designs.Add(new(gift, new DesignOutcome.Derived(Squares(4))));
            var mine = Enumerable.Range(0, strips).Select(i => Strip(g, i)).ToArray();
            allStrips.AddRange(mine);
            var (glueUp, panel) = GlueUp(g, gift, mine);
            panels.Add((glueUp, panel));
        }

        Mill(Operation.FaceJoint, Station.Jointer, allStrips, (p, _) => p with { Thickness = p.Thickness - In(1, 32) }, Length.Zero);
        Mill(Operation.FacePlane, Station.Planer, allStrips, (p, _) => p with { Thickness = In(3, 4) }, In(3, 4));
        Mill(Operation.EdgeJoint, Station.Jointer, allStrips, (p, i) => p with { Width = allStrips[i].Piece.Width }, Length.Zero);
        foreach (var (glueUp, panel) in panels)
            Add(Operation.GlueUp, Station.Clamps, [new Work { In = [.. glueUp.Strips.Select(s => s.Piece)], Out = [panel] }], glueUp: glueUp.Id, gift: glueUp.Gift, wait: 60);
        Add(Operation.FlattenPanel, Station.Planer, [.. panels.Select(p => Simple(p.Panel, p.Panel with { Thickness = In(23, 32) }, In(23, 32)))]);
        Add(Operation.TrimWidth, Station.TableSaw, [.. panels.Select(p => Simple(p.Panel, Trimmed(p.Panel), In(4)) with { Taken = p.Panel.Width - In(4) })]);
        foreach (var (glueUp, panel) in panels) made.Add(Crosscut(glueUp, Trimmed(panel)));

        var stand = new Gift { Label = $"{name}-stand", Design = "rod-stand", Recipient = "The neighbour" };
        gifts.Add(stand);
        designs.Add(new(stand, new DesignOutcome.Derived(Stand)));
        made.Add(new(stand.Label, [.. Enumerable.Range(1, 4).Select(i => new MadePart("rod", i, $"{stand.Label}-rod{i}")), .. Enumerable.Range(1, 2).Select(i => new MadePart("plate", i, $"{stand.Label}-plate{i}"))]));
        var rod = new RodUse("R1", "paper-birch", In(1, 4), In(36), true, [.. Enumerable.Range(1, 4).Select(i => $"{stand.Label}-rod{i}")], In(25));
        Assembly(stand, Stand, [new Work
        {
            In = ["R1"], Out = [.. rod.Pieces.Select(id => new Piece(id, In(5, 2), In(1, 4), In(1, 4), []))], Kerf = In(1, 8), Cuts = 4, Setting = In(5, 2),
        }]);
        var unmade = new Gift { Label = $"{name}-late", Design = "striped-squares" };
        gifts.Add(unmade);

        var spare = new Offcut { Label = "ZZ1", Species = "black-cherry", Length = In(9), Width = In(2), Thickness = In(7, 8) };
        pile.Add(spare);
        var request = new PlanRequest { Workshop = "Shed behind the apple trees", Shop = shop, Pile = [.. pile], Gifts = gifts.ToImmutable() };
        var remainder = new Piece("G1/rest", In(9, 2), In(4), In(23, 32), panels.Count > 0 ? Trimmed(panels[0].Panel).Lanes : []);
        var plan = new Plan
        {
            Request = request,
            Fingerprint = "0123456789abcdef",
            Made = made.ToImmutable(),
            Unmade = [new(unmade.Label, [new Reason.MissingStrips("square", 1, Tone.Light, In(5, 4), In(13), In(3, 4))])],
            GlueUps = [.. panels.Select(p => p.GlueUp)],
            Boards = [],
            Steps = [.. steps],
            Leftovers = [new(new Piece("ZZ1", spare.Length, spare.Width, spare.Thickness, [new("ZZ1", spare.Width)]), LeftoverPlace.Pile), new(remainder, LeftoverPlace.Pile), new(new Piece("bit", In(1), In(1), In(1), []), LeftoverPlace.ScrapBin)],
            Ledger = [],
            Rods = [rod],
            Shopping = [new("birch rod", 1, In(1, 4), In(36), stand.Label)],
            Levels = [],
        };
        return (plan, designs.ToImmutable());
    }

    private (Offcut Offcut, Piece Piece) Strip(int glueUp, int index)
    {
        var label = $"{prefix}{(glueUp * 20) + index + 1}";
        var width = In(18 + ((index * 5) % 11), 16);
        var length = In(18) + (In(1, 4) * ((index * 7) % 9));
        var offcut = new Offcut { Label = label, Species = Woods[(index + (glueUp * 2)) % Woods.Length], Length = length, Width = width + In(1, 16), Thickness = In(7, 8) };
        pile.Add(offcut);
        return (offcut, new Piece(label, length, width, In(3, 4), [new(label, width)]));
    }

    private (GlueUp, Piece) GlueUp(int index, Gift gift, (Offcut Offcut, Piece Piece)[] strips)
    {
        var overlap = strips.Min(s => s.Piece.Length);
        var width = Length.Sum(strips.Select(s => s.Piece.Width));
        var needs = new PanelNeeds(Squares(4).Parts[0], 4, 1, shop);
        var glueUp = new GlueUp
        {
            Id = $"G{index + 1}",
            Gift = gift.Label,
            Part = "square",
            Blanks = 4,
            Layers = 1,
            Strips = [.. strips.Select(s => new Strip(s.Piece.Id, s.Offcut.Label, s.Offcut.Width, s.Piece.Width, s.Piece.Length, s.Piece.Thickness))],
            Overlap = overlap,
            RoughWidth = width,
            TargetWidth = In(4),
            ThicknessLadder = needs.ThicknessLadder(In(3, 4), In(1, 64)),
            WidthLadder = needs.WidthLadder(width, StripMilling.Width(width, shop).Spread * 2),
            ChancePerMille = 962,
            LeastContrastHundredths = 1240,
            ClampsNeeded = 4,
        };
        return (glueUp, new Piece(glueUp.Id, overlap, width, In(3, 4), [.. strips.Select(s => new Lane(s.Offcut.Label, s.Piece.Width))]));
    }

    private static Piece Trimmed(Piece panel) => panel with
    {
        Width = In(4),
        Thickness = In(23, 32),
        Lanes = [.. panel.Lanes.Zip(In(4).Split(panel.Lanes.Length), (lane, width) => lane with { Width = width })],
    };

    private MadeGift Crosscut(GlueUp glueUp, Piece panel)
    {
        var blanks = Enumerable.Range(1, 4).Select(i => panel with { Id = $"{glueUp.Gift}-square{i}", Length = In(4) }).ToImmutableArray();
        Add(Operation.CrosscutBlanks, Station.TableSaw, [new Work
        {
            In = [glueUp.Id], Out = blanks, Taken = panel.Length - In(16) - (In(1, 8) * 3), TakenFirst = In(1, 4), Kerf = In(1, 8), Cuts = 3, Setting = In(4),
        }], glueUp: glueUp.Id, gift: glueUp.Gift);
        return new(glueUp.Gift, [.. blanks.Select((b, i) => new MadePart("square", i + 1, b.Id))]) { ChancePerMille = 962 };
    }

    private void Assembly(Gift gift, Product product, ImmutableArray<Work> first)
    {
        foreach (var (i, step) in product.Assembly.Index())
            Add(step.Operation, step.Station, i == 0 ? first : [new Work { In = ["G1"], Out = [] }], gift: gift.Label, assembly: i, wait: step.Operation == Operation.Assemble ? 60 : 0);
    }

    private void Mill(Operation operation, Station station, List<(Offcut Offcut, Piece Piece)> strips, Func<Piece, int, Piece> then, Length setting) =>
        Add(operation, station, [.. strips.Select((s, i) => Simple(s.Piece, then(s.Piece, i), setting) with { Workaround = i == 1 ? Workaround.CarrierSled : Workaround.None })]);

    private static Work Simple(Piece before, Piece after, Length setting) => new() { In = [before.Id], Out = [after], Setting = setting };

    private void Add(Operation operation, Station station, ImmutableArray<Work> works, string glueUp = "", string gift = "", int assembly = -1, int wait = 0) =>
        steps.Add(new Step
        {
            Number = steps.Count + 1,
            Station = station,
            Operation = operation,
            GlueUp = glueUp,
            Gift = gift,
            AssemblyIndex = assembly,
            Works = works,
            HandsOnMinutes = WorkContent.HandsOnMinutes(operation, works.Length, shop),
            WaitMinutes = wait,
        });
}
