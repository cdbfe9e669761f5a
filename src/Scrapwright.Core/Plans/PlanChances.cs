using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans;

/// <summary>
/// Chances that panels and gifts of a plan meet their sizes. Made once for a plan; afterwards quick enough to be asked while strips are dragged about.
/// docs/science/chance.md has the model.
/// </summary>
public sealed class PlanChances
{
    private readonly PlanIndex index;
    private readonly PassBook passes;
    private readonly Shop shop;

    /// <summary>Reads the steps of a plan.</summary>
    /// <param name="index">The plan with its designs derived.</param>
    public PlanChances(PlanIndex index)
    {
        ArgumentNullException.ThrowIfNull(index);
        this.index = index;
        shop = index.Plan.Request.Shop;
        passes = new PassBook(index.Plan);
    }

    /// <summary>Chances of one glue-up, as planned or with other strips or another order. A strip that the plan's steps do not work counts as milled alone.</summary>
    /// <param name="glueUp">The glue-up; of its numbers only strips, overlap, blanks and layers are read.</param>
    /// <exception cref="ArgumentException">Its gift has no such panel part.</exception>
    public SizeOdds Of(GlueUp glueUp) => SizeChance.Of([Worked(glueUp)], [], shop);

    /// <summary>Chances of all panels and boards of a gift together, as planned.</summary>
    /// <param name="gift">Label of the gift.</param>
    public SizeOdds OfGift(string gift) => OfGift(gift, []);

    /// <summary>The same with some glue-ups changed.</summary>
    /// <param name="gift">Label of the gift.</param>
    /// <param name="changed">Glue-ups that stand for those of the same id.</param>
    public SizeOdds OfGift(string gift, IReadOnlyCollection<GlueUp> changed)
    {
        ArgumentNullException.ThrowIfNull(changed);
        return SizeChance.Of(
            [.. GlueUpsOf(gift).Select(g => Worked(changed.FirstOrDefault(c => c.Id == g.Id) ?? g))],
            [.. BoardsOf(gift).Select(Worked)],
            shop);
    }

    /// <summary>How likely each width or thickness of a panel is before it is cut or planed to size; null where nothing is uncertain.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Another size.</exception>
    public OddsCurve? Curve(GlueUp glueUp, SizeKind size) => OddsCurve.Of(Worked(glueUp), size, shop);

    /// <summary>The curve of width or thickness, whichever is likelier to be missed; null where nothing is uncertain.</summary>
    public OddsCurve? WeakerCurve(GlueUp glueUp)
    {
        var odds = Of(glueUp);
        return odds.Thickness < odds.Width
            ? Curve(glueUp, SizeKind.Thickness) ?? Curve(glueUp, SizeKind.Width)
            : Curve(glueUp, SizeKind.Width) ?? Curve(glueUp, SizeKind.Thickness);
    }

    /// <summary>The size of a gift that is likeliest to be missed, and what a little more of it would do; null when it has neither panels nor boards.</summary>
    /// <param name="gift">Label of the gift.</param>
    public WeakLink? WeakestLink(string gift)
    {
        var more = ReadableSize.Mark(shop.Unit) * 2;
        var panels = GlueUpsOf(gift).Select(g => (g.Id, Panel: Worked(g))).ToArray();
        var boards = BoardsOf(gift).Select(b => (b.Piece, Board: Worked(b))).ToArray();
        var all = panels.SelectMany(p => Links(p.Id, SizeChance.Of([p.Panel], [], shop)))
            .Concat(boards.SelectMany(b => Links(b.Piece, SizeChance.Of([], [b.Board], shop)))).ToArray();
        if (all.Length == 0) return null;
        var (where, size, share) = all.MinBy(l => l.Share);
        var strip = GlueUpsOf(gift).FirstOrDefault(g => g.Id == where) is { } glueUp && size != SizeKind.Length
            ? glueUp.Strips.MinBy(s => size == SizeKind.Width ? s.Width : s.Thickness)!.Piece
            : "";
        var then = SizeChance.Of(
            [.. panels.Select(p => p.Id == where ? Grown(p.Panel, size, more) : p.Panel)],
            [.. boards.Select(b => b.Piece == where ? Grown(b.Board, size, more) : b.Board)],
            shop);
        return new WeakLink(where, size, strip, (int)Math.Floor(Math.Min(1, share) * 1000), more, then.PerMille);
    }

    /// <summary>A plan with the chance of every glue-up and made gift worked out and written down.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="designs">What came of the designs of its gifts.</param>
    public static Plan Note(Plan plan, ImmutableArray<GiftDesign> designs)
    {
        var chances = new PlanChances(new PlanIndex(plan, designs));
        return plan with
        {
            GlueUps = [.. plan.GlueUps.Select(g => g with { ChancePerMille = chances.Of(g).PerMille })],
            Made = [.. plan.Made.Select(m => m with { ChancePerMille = chances.OfGift(m.Gift).PerMille })],
        };
    }

    private static IEnumerable<(string Where, SizeKind Size, double Share)> Links(string where, SizeOdds odds) =>
        [(where, SizeKind.Width, odds.Width), (where, SizeKind.Thickness, odds.Thickness), (where, SizeKind.Length, odds.Length)];

    // One strip more of width, every thinnest strip more of thickness, all strips more of length.
    private static WorkedPanel Grown(WorkedPanel panel, SizeKind size, Length more) => size switch
    {
        SizeKind.Length => panel with { Overlap = panel.Overlap + more },
        SizeKind.Width => panel with { Strips = panel.Strips.SetItem(0, panel.Strips[0] with { Width = panel.Strips[0].Width + more }) },
        _ => panel with
        {
            Strips = [.. panel.Strips.Select(s => s.Thickness == panel.Strips.Min(o => o.Thickness) ? s with { Thickness = s.Thickness + more } : s)],
        },
    };

    private static WorkedBoard Grown(WorkedBoard board, SizeKind size, Length more) => size switch
    {
        SizeKind.Length => board with { Length = board.Length + more },
        SizeKind.Width => board with { Strip = board.Strip with { Width = board.Strip.Width + more } },
        _ => board with { Strip = board.Strip with { Thickness = board.Strip.Thickness + more } },
    };

    private IEnumerable<GlueUp> GlueUpsOf(string gift) => index.Plan.GlueUps.Where(g => g.Gift == gift);

    private IEnumerable<BoardRun> BoardsOf(string gift) => index.Plan.Boards.Where(b => b.Gift == gift);

    private WorkedPanel Worked(GlueUp glueUp)
    {
        ArgumentNullException.ThrowIfNull(glueUp);
        var part = index.Product(glueUp.Gift)?.Parts.FirstOrDefault(p => p.Key == glueUp.Part && p.Kind == PartKind.Panel)
            ?? throw new ArgumentException($"Gift {glueUp.Gift} has no panel part {glueUp.Part}. Maybe the index was made without designs.", nameof(glueUp));
        return new WorkedPanel(
            new PanelNeeds(part, glueUp.Blanks, glueUp.Layers, shop), glueUp.Overlap,
            [.. glueUp.Strips.Select(s => passes.Strip(s.Piece, index.Offcut(s.Offcut), s.Layers, s.Width, s.Thickness, shop))]);
    }

    private WorkedBoard Worked(BoardRun board)
    {
        var product = index.Product(board.Gift);
        var run = product?.Runs.FirstOrDefault(r => r.Mark == board.Run)
            ?? throw new InvalidOperationException($"Gift {board.Gift} has no run {board.Run}. Maybe the index was made without designs.");
        return new WorkedBoard(
            new SolidNeeds(run, product!.Parts, shop), board.Length, passes.Strip(board.Piece, index.Offcut(board.Offcut), board.Layers, board.Width, board.Thickness, shop));
    }
}
