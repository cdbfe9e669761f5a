using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans.Ideas;

/// <summary>The order of ideas, and the rule of each order in one sentence.</summary>
public static class IdeaRanks
{
    /// <summary>Order of proposals.</summary>
    public const string ProposalRule = "What puts most of the pile into gifts comes first; of equals, what takes fewer clamp loads.";

    /// <summary>Order of uses.</summary>
    public const string UseRule = "First what makes more gifts than leaving it alone does, then better looks, then more of the offcut in gifts, then less wood cut from the pile, then fewer clamp loads.";

    /// <summary>Order of purchases.</summary>
    public const string PurchaseRule = "What makes gifts of most worth by priority possible comes first; of equals, clamps before boards and small boards before large ones.";

    /// <summary>Proposals, the best first.</summary>
    public static ImmutableArray<Proposal> Ranked(IEnumerable<Proposal> proposals) =>
        [.. proposals.OrderByDescending(p => p.InGifts).ThenBy(p => p.ClampLoads).ThenBy(p => p.WoodUsed).ThenBy(p => p.Title, StringComparer.Ordinal)];

    /// <summary>Uses, the best first.</summary>
    public static ImmutableArray<OffcutUse> Ranked(IEnumerable<OffcutUse> uses) =>
    [
        .. uses.OrderByDescending(u => u.Difference.Gained.Length - u.Difference.Lost.Length).ThenByDescending(u => u.Difference.Looks)
            .ThenByDescending(u => u.ShareInGiftsPerMille).ThenBy(u => u.Difference.Wood).ThenBy(u => u.Difference.ClampLoads).ThenBy(u => u.Gift, StringComparer.Ordinal),
    ];

    /// <summary>Purchases, the best first.</summary>
    public static ImmutableArray<Purchase> Ranked(IEnumerable<Purchase> purchases) =>
        [.. purchases.OrderByDescending(p => p.Worth).ThenByDescending(p => p.Unlocks.Length).ThenBy(SizeOf).ThenBy(p => p.Board?.Species ?? "", StringComparer.Ordinal)];

    private static Volume SizeOf(Purchase purchase) =>
        purchase.Board is { } board ? Volume.Of(board.Length, board.Width, board.Thickness) : Volume.Zero;
}
