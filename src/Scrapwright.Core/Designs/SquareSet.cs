using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Designs;

/// <summary>The set of squares: its parameters, its part, its steps, and how a stand learns which set it holds.</summary>
internal static class SquareSet
{
    internal const string Key = "square";
    internal const string Holds = "holds";
    internal const string Count = "count";
    private const string Size = "size";
    private const string Thickness = "thickness";
    internal const string WithSquares = "with-squares";

    internal static readonly ImmutableArray<DesignParameter> Parameters =
    [
        new(Count, "Squares", ParameterKind.Count, "4", "How many squares the set has.", [], "1", "24"),
        new(Size, "Side", ParameterKind.Length, "4 in", "Side of one square.", [], "1 in", "24 in"),
        new(Thickness, "Thickness", ParameterKind.Length, "3/8 in", "Thickness of one square after sanding.", [], "1/8 in", "2 in"),
    ];

    internal static readonly ImmutableArray<DesignParameter> HolderParameters =
    [
        new(Holds, "Holds", ParameterKind.Gift, "", "Label of the gift whose squares it holds; its size follows from them.", []),
        new(WithSquares, "Makes its squares too", ParameterKind.Choice, "no", "Yes when stand and squares are one gift.", ["no", "yes"]),
        .. Parameters,
    ];

    internal static StackedSet Read(DesignOptions options) =>
        new(options.ReadCount(Count), options.ReadLength(Size), options.ReadLength(Thickness));

    /// <summary>Whether a product makes squares that another may hold.</summary>
    internal static bool IsMadeBy(Product product) => product.Set is not null && product.Parts.Any(p => p.Key == Key);

    /// <summary>The set a stand holds, that of another gift or the one its own options describe, and whether the stand makes it.</summary>
    internal static (StackedSet Set, bool Makes) ReadHeld(DesignOptions options, DesignContext context)
    {
        var own = Read(options);
        var makes = options.ReadChoice(WithSquares) == "yes";
        if (context.Holds is null)
        {
            options.Require(options.ReadText(Holds).Length == 0, Holds, DesignMessages.GiftWithSquares);
            return (own, makes);
        }

        if (context.Holds.Set is not { } held || !IsMadeBy(context.Holds))
        {
            options.Refuse(Holds, DesignMessages.GiftWithSquares);
            return (own, makes);
        }

        options.Require(!options.IsGiven(Count) || own.Count == held.Count, Count, DesignMessages.AsTheHeldSet($"{held.Count}"));
        options.Require(!options.IsGiven(Size) || own.Size == held.Size, Size, DesignMessages.AsTheHeldSet(options.Show(held.Size)));
        options.Require(!options.IsGiven(Thickness) || own.Thickness == held.Thickness, Thickness, DesignMessages.AsTheHeldSet(options.Show(held.Thickness)));
        options.Require(!makes, WithSquares, DesignMessages.NoOwnSquares);
        return (held, false);
    }

    internal static Part PartOf(StackedSet set, PanelWish wish, EdgeChoice edge) => new()
    {
        Key = Key,
        Title = "square",
        Kind = PartKind.Panel,
        Length = set.Size,
        Width = set.Size,
        Thickness = set.Thickness,
        Count = set.Count,
        Wish = wish,
        Edge = edge.Treatment,
        EdgeSize = edge.Size,
    };

    /// <summary>Notes that the squares are too small for the stand, at the option that says how large they are.</summary>
    internal static void RefuseSize(DesignOptions options, DesignContext context, Length least, string reason) =>
        options.Refuse(context.Holds is null ? Size : Holds, DesignMessages.SquaresAtLeast(options.ShowLeast(least), reason));

    /// <summary>Height of the stack before its squares are sanded.</summary>
    internal static Length UnsandedHeight(StackedSet set, Shop shop) => set.Height + (shop.Allowances.Sand.Mean * (2L * set.Count));

    internal static string InWords(StackedSet set, DesignOptions options) =>
        $"{set.Count} {(set.Count == 1 ? "square" : "squares")}, {options.Show(set.Size)}";
}
