using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Fits;

/// <summary>Plans for the fits alone: parts with the strips they are of, and none of the steps between. Not audited.</summary>
internal sealed class StandPlan
{
    private readonly Dictionary<string, Offcut> pile = [];
    private readonly List<Piece> pieces = [];
    private readonly List<MadeGift> made = [];
    private readonly List<GlueUp> glueUps = [];
    private readonly List<RodUse> rods = [];

    internal List<Gift> Gifts { get; } = [];

    internal Shop Shop { get; set; } = new();

    internal StandPlan Offcut(string label, string species, RingOrientation rings = RingOrientation.Flat)
    {
        pile[label] = new() { Label = label, Species = species, Rings = rings, Length = In(20), Width = In(3), Thickness = In(1) };
        return this;
    }

    /// <summary>Makes every part of a gift, each copy of the strips named, all strips equally wide. Rods come of birch.</summary>
    internal StandPlan Make(string gift, params (string Part, string Offcuts)[] woods)
    {
        var product = Product(gift);
        var parts = new List<MadePart>();
        foreach (var part in product.Parts)
        {
            var strips = woods.FirstOrDefault(w => w.Part == part.Key).Offcuts?.Split(' ') ?? [];
            foreach (var copy in Enumerable.Range(1, part.Count))
            {
                var id = $"{gift}-{part.Key}{copy}";
                ImmutableArray<Lane> lanes = part.Kind == PartKind.Rod ? [] : [.. strips.Zip(part.Width.Split(Math.Max(1, strips.Length)), (s, w) => new Lane(s, w))];
                pieces.Add(new(id, part.Length, part.Width, part.Thickness, lanes));
                parts.Add(new(part.Key, copy, id));
            }

            if (part.Kind == PartKind.Rod) rods.Add(new("R1", "paper-birch", part.Width, In(36), false, [.. parts.Where(p => p.Part == part.Key).Select(p => p.Piece)], Length.Zero));
            if (part.Kind == PartKind.Panel) Panel(gift, part, strips);
        }

        made.Add(new(gift, [.. parts]));
        return this;
    }

    internal Plan Build() => new()
    {
        Request = Request,
        Fingerprint = "",
        Made = [.. made],
        Unmade = [],
        GlueUps = [.. glueUps],
        Boards = [],
        Steps = [new() { Number = 1, Station = Station.Sanding, Operation = Operation.Sand, Works = [.. pieces.Select(p => new Work { In = [p.Id], Out = [p] })], HandsOnMinutes = 1, WaitMinutes = 0 }],
        Leftovers = [],
        Ledger = [],
        Rods = [.. rods],
        Shopping = [],
        Levels = [],
    };

    private static Length In(int inches) => Length.FromInches(inches);

    private PlanRequest Request => new() { Shop = Shop, Pile = [.. pile.Values], Gifts = [.. Gifts] };

    private Product Product(string gift) =>
        ((DesignOutcome.Derived)GiftDesigns.Derive(Request.Gifts, [], Shop).First(d => d.Gift.Label == gift).Outcome).Product;

    private void Panel(string gift, Part part, string[] strips)
    {
        var id = $"G{glueUps.Count + 1}";
        var lanes = strips.Zip(part.Width.Split(Math.Max(1, strips.Length)), (s, w) => new Lane(s, w)).ToImmutableArray();
        pieces.Add(new(id, In(20), part.Width, part.Thickness, lanes));
        var ladder = new Ladder(part.Width, []);
        glueUps.Add(new()
        {
            Id = id,
            Gift = gift,
            Part = part.Key,
            Blanks = part.Count,
            Layers = 1,
            Strips = [.. lanes.Select((l, i) => new Strip($"{id}.{i + 1}", l.Offcut, l.Width, l.Width, In(20), part.Thickness))],
            Overlap = In(20),
            RoughWidth = part.Width,
            TargetWidth = part.Width,
            ThicknessLadder = ladder,
            WidthLadder = ladder,
            ChancePerMille = 999,
            LeastContrastHundredths = 0,
            ClampsNeeded = 2,
        });
    }
}
