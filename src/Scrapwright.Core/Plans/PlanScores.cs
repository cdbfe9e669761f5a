using System.Collections.Immutable;
using System.Numerics;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Plans.Choices;

namespace Scrapwright.Core.Plans;

/// <summary>How good a plan is on each level of the objective.</summary>
/// <param name="GiftsMade">Sum of the made gifts' priority weights.</param>
/// <param name="Looks">Points for variety inside circles, wished species and patterns that are made.</param>
/// <param name="WoodUsed">Rough volume cut out of the pile. [mm³], each cut rounded up</param>
/// <param name="ClampLoads">Number of glue-ups, and of boards glued face to face.</param>
public sealed record PlanScores(long GiftsMade, long Looks, long WoodUsed, long ClampLoads)
{
    private static readonly BigInteger CubicMillimetre = BigInteger.Pow(10, 27);

    /// <summary>The value of one level; not of <see cref="LevelKind.StripsAsBefore"/>, which needs the plan before.</summary>
    public long ValueOf(LevelKind kind) => kind switch
    {
        LevelKind.GiftsMade => GiftsMade,
        LevelKind.Looks => Looks,
        LevelKind.WoodUsed => WoodUsed,
        LevelKind.ClampLoads => ClampLoads,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "A level."),
    };

    /// <summary>The scores of a plan.</summary>
    public static PlanScores Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var request = plan.Request;
        return Of(request, request.DeriveDesigns(), plan.Made, plan.GlueUps, plan.Boards, plan.Faced);
    }

    /// <summary>The scores of a plan that is still being put together.</summary>
    /// <param name="request">The facts.</param>
    /// <param name="designs">What came of every gift's design.</param>
    /// <param name="made">The gifts that are made.</param>
    /// <param name="glueUps">The glue-ups.</param>
    /// <param name="boards">The board runs.</param>
    /// <param name="faced">The boards glued face to face.</param>
    public static PlanScores Of(
        PlanRequest request,
        ImmutableArray<GiftDesign> designs,
        ImmutableArray<MadeGift> made,
        ImmutableArray<GlueUp> glueUps,
        ImmutableArray<BoardRun> boards,
        ImmutableArray<FacedBoard> faced)
    {
        ArgumentNullException.ThrowIfNull(request);
        var weights = PriorityWeights.Of(request.Gifts);
        var labels = made.Select(m => m.Gift).ToHashSet(StringComparer.Ordinal);
        var singles = PlanStock.ByLabel(request);
        var gluings = faced.Select(f => FaceGluing.Find(f.Label, singles, request.Shop)).OfType<FaceGluing>().DistinctBy(g => g.Label).ToDictionary(g => g.Label, StringComparer.Ordinal);
        var offcuts = singles.Values.Concat(gluings.Values.Select(g => g.Board)).ToDictionary(o => o.Label, StringComparer.Ordinal);
        var looks = new LooksScore(designs, labels, glueUps, boards, offcuts);
        var margins = new Dictionary<string, GiftMargins>(StringComparer.Ordinal);
        long wood = 0;
        foreach (var glueUp in glueUps)
        {
            if (ProductOf(designs, glueUp.Gift) is { } product && product.Parts.FirstOrDefault(p => p.Key == glueUp.Part && p.Kind == PartKind.Panel) is { } part)
            {
                var inHand = glueUp.Also.Where(a => IsAlike(a, part)).Select(a => (a.Gift, a.Part)).Prepend((glueUp.Gift, Part: part.Key))
                    .Select(s => InHand(glueUp, s.Gift, s.Part)).Aggregate((one, other) => one.Or(other));
                var length = new PanelNeeds(part, glueUp.Blanks, glueUp.Layers, request.Shop) { Margins = inHand }.Overlap;
                wood += glueUp.Strips.Sum(s => Cut(length, s.RoughWidth, s.Layers, s.Offcut));
            }
        }

        foreach (var board in boards)
        {
            if (ProductOf(designs, board.Gift) is { } product && product.Runs.FirstOrDefault(r => r.Mark == board.Run) is { Members.IsEmpty: false } run)
            {
                var needs = new SolidNeeds(run, product.Parts, request.Shop) { Margins = MarginsOf(board.Gift, product).OfBoard(run.Mark) };
                wood += Cut(needs.Length, board.RoughWidth, board.Layers, board.Offcut);
            }
        }

        return new PlanScores(request.Gifts.Where(g => labels.Contains(g.Label)).Sum(g => weights[g.Priority]), looks.Points(), wood, glueUps.Length + faced.Length);

        // What is glued already may have been for a gift whose parts have another size by now.
        bool IsAlike(GlueUpShare share, Part part) =>
            ProductOf(designs, share.Gift)?.Parts.FirstOrDefault(p => p.Key == share.Part && p.Kind == PartKind.Panel) is { } other && other.HasSizeOf(part);

        SizeMargins InHand(GlueUp glueUp, string gift, string part) =>
            ProductOf(designs, gift) is { } product && product.Parts.Any(p => p.Key == part && p.Kind == PartKind.Panel)
                ? MarginsOf(gift, product).OfPanel(part, DoneGlueUp.Of(glueUp).PiecesFor(gift, part), glueUp.Layers) : SizeMargins.None;

        GiftMargins MarginsOf(string gift, Product product)
        {
            if (!margins.TryGetValue(gift, out var known))
            {
                margins[gift] = known = GiftMargins.Of(product, request.Shop);
            }

            return known;
        }

        long Cut(Length length, Length width, int layers, string offcut)
        {
            if (!offcuts.TryGetValue(offcut, out var found))
            {
                return 0;
            }

            // Of a board glued face to face both offcuts are used up in their whole thickness.
            var thickness = gluings.TryGetValue(offcut, out var gluing) ? gluing.RoughThickness : found.Thickness;
            var volume = (BigInteger)length.Picometres * width.Picometres * thickness.Picometres;
            var share = CubicMillimetre * Math.Max(1, layers);
            return (long)((volume + share - 1) / share);
        }
    }

    private static Product? ProductOf(ImmutableArray<GiftDesign> designs, string gift) =>
        (designs.FirstOrDefault(d => d.Gift.Label == gift)?.Outcome as DesignOutcome.Derived)?.Product;
}
