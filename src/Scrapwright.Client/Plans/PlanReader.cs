using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Fits;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Chances;
using Scrapwright.Core.Plans.Why;
using Scrapwright.Core.Sheets;
using Scrapwright.Core.Wood;

namespace Scrapwright.Client.Plans;

/// <summary>Looks things up in a plan: which wood a piece is, what a part is called, what an assembly step says.</summary>
public sealed class PlanReader
{
    private readonly Lazy<ImmutableArray<PlanFit>> fits;
    private readonly Lazy<ImmutableArray<CrossGrainJoint>> crossings;
    private readonly Lazy<Dictionary<string, GiftWeight>> weights;
    private readonly Lazy<Dictionary<string, PanelMovement>> movements;
    private readonly Lazy<ImmutableArray<GiftDifference>> differences;
    private readonly Lazy<ImmutableArray<Consumable>> consumables;
    private readonly Lazy<PlanChances> chances;

    /// <summary>A reader of one plan.</summary>
    public PlanReader(Plan plan)
    {
        Index = PlanIndex.Of(plan);
        fits = new(() => PlanFits.Of(Index));
        crossings = new(() => CrossGrain.Of(Index));
        weights = new(() => GiftWeights.Of(Index).ToDictionary(w => w.Gift, StringComparer.Ordinal));
        differences = new(() => GiftDifference.WorthALook(Index));
        movements = new(() => plan.GlueUps.Zip(PanelMovement.Of(Index)).ToDictionary(pair => pair.First.Id, pair => pair.Second, StringComparer.Ordinal));
        chances = new(() => PlanChances.Of(plan, Index.Designs));
        consumables = new(() => Consumables.For(plan, Index.Designs));
    }

    /// <summary>What the plan's labels mean.</summary>
    public PlanIndex Index { get; }

    /// <summary>The plan.</summary>
    public Plan Plan => Index.Plan;

    /// <summary>How likely panels, boards and gifts meet size. Worked out once, when first asked for.</summary>
    public PlanChances Chances => chances.Value;

    /// <summary>All glue-ups of the part that a glue-up is for.</summary>
    public ImmutableArray<GlueUp> PanelsOf(GlueUp glueUp) => [.. Plan.GlueUps.Where(g => g.IsFor(glueUp.Gift, glueUp.Part))];

    /// <summary>Whom a glue-up is for: every recipient, and how many pieces the others get.</summary>
    public string RecipientsOf(GlueUp glueUp) => PlanWords.Gifts(glueUp, Recipient);

    /// <summary>What can be asked about a glue-up.</summary>
    public static ImmutableArray<WhyQuestion> QuestionsAbout(GlueUp glueUp) =>
    [
        WhyQuestion.Resawing(glueUp.Gift, glueUp.Part),
        WhyQuestion.GlueUps(glueUp.Gift, glueUp.Part),
        .. glueUp.Strips.Select(s => s.Offcut).Distinct().Select(offcut => WhyQuestion.ThisOffcut(glueUp.Gift, glueUp.Part, offcut)),
    ];

    /// <summary>How different the gifts of each circle that share a design look, the most alike first.</summary>
    public ImmutableArray<GiftDifference> Differences => differences.Value;

    /// <summary>How the panel of one of the plan's glue-ups moves over the year. All are worked out at once, when the first is asked for.</summary>
    public PanelMovement Movement(GlueUp glueUp) => movements.Value[glueUp.Id];

    /// <summary>Every fit of the gifts made, those that do not hold first. Worked out once, when first asked for.</summary>
    public IEnumerable<PlanFit> Fits => fits.Value.OrderBy(fit => fit.Season.Verdict is FitVerdict.Good);

    /// <summary>Joints glued across the grain that need care.</summary>
    public IEnumerable<CrossGrainJoint> Crossings => crossings.Value.Where(joint => joint.NeedsCare);

    /// <summary>What the plan uses up: glue, finish, abrasives, rags.</summary>
    public ImmutableArray<Consumable> UsedUp => consumables.Value;

    /// <summary>What a gift weighs, in the maker's unit; empty when it is not made.</summary>
    public string Weight(string gift) => weights.Value.TryGetValue(gift, out var weight) ? weight.InWords(Plan.Request.Shop) : "";

    /// <summary>The species in the glue-ups, boards and rods of the plan, by name.</summary>
    public ImmutableArray<Species> Woods =>
    [
        .. Plan.GlueUps.SelectMany(glueUp => glueUp.Strips).Select(strip => SpeciesOf(strip.Offcut))
            .Concat(Plan.Boards.Select(board => SpeciesOf(board.Offcut)))
            .Concat(Plan.Rods.Select(rod => rod.Species))
            .Select(key => SpeciesTable.Find(key)).OfType<Species>().Distinct().OrderBy(species => species.Name, StringComparer.OrdinalIgnoreCase),
    ];

    /// <summary>Key of the species of a single offcut; empty when it is not in the pile.</summary>
    public string SpeciesOf(string offcut) => Index.SpeciesOf(offcut);

    /// <summary>Species along the width of a piece, lower edge first, each with its share of the width.</summary>
    public ImmutableArray<(string Species, double Share)> Bands(Piece piece) =>
        piece.Width.IsZero ? [] : [.. piece.Lanes.Select(l => (SpeciesOf(l.Offcut), l.Width.Picometres / (double)piece.Width.Picometres))];

    /// <summary>What a gift is, in a line.</summary>
    public string Summary(string gift) => ProductOf(gift)?.Summary ?? "";

    /// <summary>Who a gift is for, or its label.</summary>
    public string Recipient(string gift) => Index.Gift(gift) is { Recipient.Length: > 0 } found ? found.Recipient : gift;

    /// <summary>The product of a gift; null when its options did not fit.</summary>
    public Product? ProductOf(string gift) => Index.Product(gift);

    /// <summary>What a part is called.</summary>
    public string PartTitle(string gift, string part) => Index.PartTitle(gift, part);

    /// <summary>What an option of a gift is called on its form, in small letters; its key when the design does not tell.</summary>
    public string OptionTitle(string gift, string option) =>
        ProductOf(gift) is { } product && DesignCatalogue.FindFamily(product.Family)?.Parameters.FirstOrDefault(p => p.Key == option) is { } parameter
            ? parameter.Title.ToLowerInvariant()
            : option;

    /// <summary>The text of an assembly step with its sizes filled in; of a milling step what to mind so that faces are glued right, strips lie flush and sisters opposite each other, mostly nothing.</summary>
    public string TextOf(Step step, Func<Length, string> text)
    {
        if (step.AssemblyIndex < 0)
        {
            return string.Join(" ", new[] { FaceWords.Of(Plan, step, text), StripWords.Of(Index, step), BookWords.Of(Plan, step) }.Where(t => t.Length > 0));
        }

        if (ProductOf(step.Gift) is not { } product || step.AssemblyIndex >= product.Assembly.Length)
        {
            return "";
        }

        var assembly = product.Assembly[step.AssemblyIndex];
        return string.Format(assembly.Text, [.. assembly.Sizes.Select(s => (object)text(s))]);
    }
}
