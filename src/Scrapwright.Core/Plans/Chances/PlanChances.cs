using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;

namespace Scrapwright.Core.Plans.Chances;

/// <summary>
/// The chances of a plan, worked out from its steps and the shop's allowances. A panel meets size when all its layers hold width, thickness and length as they are
/// planed, trimmed and squared; a gift does when all its panels and boards do, where what two of them share counts once.
/// </summary>
/// <remarks>docs/science/chance.md has the model.</remarks>
public sealed class PlanChances
{
    private PlanChances(ImmutableArray<PanelChance> panels, ImmutableArray<BoardChance> boards, ImmutableArray<GiftChance> gifts) =>
        (Panels, Boards, Gifts) = (panels, boards, gifts);

    /// <summary>One for each glue-up, in the plan's order.</summary>
    public ImmutableArray<PanelChance> Panels { get; }

    /// <summary>One for each run of solid parts, in the plan's order.</summary>
    public ImmutableArray<BoardChance> Boards { get; }

    /// <summary>One for each gift that is made, in the plan's order.</summary>
    public ImmutableArray<GiftChance> Gifts { get; }

    /// <summary>The chance of a gift; null when it is not made.</summary>
    public GiftChance? FindGift(string gift) => Gifts.FirstOrDefault(g => g.Gift == gift);

    /// <summary>The chance of a glue-up's panel; null when there is none of that id.</summary>
    public PanelChance? FindPanel(string glueUp) => Panels.FirstOrDefault(p => p.GlueUp == glueUp);

    /// <summary>The chances of a plan that holds.</summary>
    public static PlanChances Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Of(plan, plan.Request.DeriveDesigns());
    }

    /// <summary>The plan with its chances and the spreads of its panels' widths written into it.</summary>
    public static Plan Stated(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Stated(plan, plan.Request.DeriveDesigns());
    }

    /// <summary>The same with what came of the designs.</summary>
    /// <param name="plan">A plan that holds.</param>
    /// <param name="designs">What came of every gift's design.</param>
    public static PlanChances Of(Plan plan, ImmutableArray<GiftDesign> designs)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var milled = MilledPieces.Of(plan);
        var products = designs.Where(d => d.Outcome is DesignOutcome.Derived)
            .ToDictionary(d => d.Gift.Label, d => ((DesignOutcome.Derived)d.Outcome).Product, StringComparer.Ordinal);
        var shop = plan.Request.Shop;
        (GlueUp GlueUp, SizeDemands Demands)[] panels = [.. plan.GlueUps.Select(g => (g, SizeDemands.Of(g, products[g.Gift], milled, shop)))];
        (BoardRun Board, SizeDemands Demands)[] boards = [.. plan.Boards.Select(b => (b, SizeDemands.Of(b, products[b.Gift], milled, shop)))];
        return new PlanChances(
            [.. panels.Select(p => Panel(p.GlueUp, p.Demands, shop.Allowances.WidthTrim.Mean))],
            [.. boards.Select(b => new BoardChance(b.Board.Gift, b.Board.Run, b.Board.Piece, b.Demands.Chances()))],
            [.. plan.Made.Select(m => Gift(m.Gift, [.. panels.Where(p => p.GlueUp.IsFor(m.Gift)).Select(p => p.Demands), .. boards.Where(b => b.Board.Gift == m.Gift).Select(b => b.Demands)]))]);
    }

    /// <summary>The same with what came of the designs.</summary>
    /// <param name="plan">A plan that holds but for its chances.</param>
    /// <param name="designs">What came of every gift's design.</param>
    public static Plan Stated(Plan plan, ImmutableArray<GiftDesign> designs)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var chances = Of(plan, designs);
        return plan with
        {
            GlueUps = [.. plan.GlueUps.Zip(chances.Panels, (glueUp, chance) => glueUp with
            {
                ChancePerMille = chance.Sizes.PerMille,
                WidthLadder = WithSpread(glueUp.WidthLadder, chance),
            })],
            Made = [.. plan.Made.Zip(chances.Gifts, (made, chance) => made with { ChancePerMille = chance.PerMille })],
        };
    }

    private static Ladder WithSpread(Ladder ladder, PanelChance chance) =>
        ladder with { Rungs = ladder.Rungs.SetItem(0, ladder.Rungs[0] with { Spread = chance.WidthSpread }) };

    private static PanelChance Panel(GlueUp glueUp, SizeDemands demands, Length trim) => new(
        glueUp.Id, demands.Chances(), glueUp.RoughWidth - trim, demands.WidthSpread, demands.StripsSpread, glueUp.TargetWidth);

    private static GiftChance Gift(string gift, SizeDemands[] demands) => new(gift, JointChance.Of(demands.SelectMany(d => d.All)));
}
