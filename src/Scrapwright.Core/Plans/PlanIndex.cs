using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans;

/// <summary>What the labels in a plan mean: offcuts, pieces, gifts and their products. Made once and shared by all that read the plan; of equal labels the first counts.</summary>
public sealed class PlanIndex
{
    private readonly Dictionary<string, Offcut> offcuts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Gift> gifts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Product> products = new(StringComparer.Ordinal);
    private readonly Dictionary<(int Step, string Piece), Piece> before = [];
    private readonly Dictionary<string, Piece> last = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Length> starts = new(StringComparer.Ordinal);
    private bool hasFollowed;

    /// <summary>An index with designs that are already derived.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="designs">What came of the designs of the plan's gifts; empty where nobody asks for products.</param>
    public PlanIndex(Plan plan, ImmutableArray<GiftDesign> designs)
    {
        ArgumentNullException.ThrowIfNull(plan);
        (Plan, Designs) = (plan, designs);
        foreach (var offcut in plan.Stock()) offcuts.TryAdd(offcut.Label, offcut);
        foreach (var gift in plan.Request.Gifts) gifts.TryAdd(gift.Label, gift);
        foreach (var design in designs)
            if (design.Outcome is DesignOutcome.Derived derived) products.TryAdd(design.Gift.Label, derived.Product);
    }

    /// <summary>The plan.</summary>
    public Plan Plan { get; }

    /// <summary>What came of the designs of its gifts.</summary>
    public ImmutableArray<GiftDesign> Designs { get; }

    /// <summary>The single offcuts of the pile, in its order, then the boards glued face to face.</summary>
    public IEnumerable<Offcut> Offcuts => offcuts.Values;

    /// <summary>An index of a plan, its designs derived.</summary>
    public static PlanIndex Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(plan, plan.Request.DeriveDesigns());
    }

    /// <summary>The single offcut or board with this label, or null.</summary>
    public Offcut? Offcut(string label) => offcuts.GetValueOrDefault(label);

    /// <summary>Key of the species of a single offcut; empty when the pile has no such offcut.</summary>
    public string SpeciesOf(string offcut) => Offcut(offcut)?.Species ?? "";

    /// <summary>The gift with this label, or null.</summary>
    public Gift? Gift(string label) => gifts.GetValueOrDefault(label);

    /// <summary>What a gift's design gives; null when its options did not fit.</summary>
    public Product? Product(string gift) => products.GetValueOrDefault(gift);

    /// <summary>What a part of a gift is called; its key when the design does not tell.</summary>
    public string PartTitle(string gift, string part) => Product(gift)?.Parts.FirstOrDefault(p => p.Key == part)?.Title ?? part;

    /// <summary>The piece as it comes to a step; null when the plan does not tell.</summary>
    /// <param name="step">One of the plan's steps.</param>
    /// <param name="piece">Id of the piece.</param>
    public Piece? Before(Step step, string piece)
    {
        ArgumentNullException.ThrowIfNull(step);
        Follow();
        return before.GetValueOrDefault((step.Number, piece));
    }

    /// <summary>The piece as the last step leaves it: an offcut or a rod as it is when no step works it; null when the plan does not tell.</summary>
    /// <param name="piece">Id of the piece.</param>
    public Piece? Last(string piece)
    {
        Follow();
        return last.GetValueOrDefault(piece);
    }

    /// <summary>How far from the marked end of its offcut, or board, a piece begins; zero when it was never crosscut, or is a panel.</summary>
    /// <param name="piece">Id of the piece.</param>
    public Length StartOf(string piece)
    {
        Follow();
        return starts.GetValueOrDefault(piece);
    }

    private void FollowStarts(Step step)
    {
        foreach (var work in step.Works.Where(w => w.In.Length == 1 && step.Operation is Operation.RoughCrosscut or Operation.CrosscutStrips or Operation.RoughRip or Operation.Rip or Operation.ResawStrips))
        {
            var isCrosscut = step.Operation is Operation.RoughCrosscut or Operation.CrosscutStrips;
            var at = starts.GetValueOrDefault(work.In[0]) + (isCrosscut ? work.TakenFirst : Length.Zero);
            foreach (var piece in work.Out)
            {
                starts[piece.Id] = at;
                if (isCrosscut) at += piece.Length + work.Kerf;
            }
        }
    }

    // Only once somebody asks: many readers need labels alone.
    private void Follow()
    {
        if (hasFollowed) return;
        hasFollowed = true;
        foreach (var offcut in offcuts.Values)
            last[offcut.Label] = new(offcut.Label, offcut.Length, offcut.Width, offcut.Thickness, [new(offcut.Label, offcut.Width)]);
        foreach (var rod in Plan.Rods) last[rod.Id] = new(rod.Id, rod.Length, rod.Diameter, rod.Diameter, []);
        foreach (var step in Plan.Steps)
        {
            foreach (var id in step.Works.SelectMany(w => w.In))
                if (last.TryGetValue(id, out var piece)) before[(step.Number, id)] = piece;
            foreach (var piece in step.Works.SelectMany(w => w.Out)) last[piece.Id] = piece;
            FollowStarts(step);
        }
    }
}
