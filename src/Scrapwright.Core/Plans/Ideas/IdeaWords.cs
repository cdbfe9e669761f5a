using System.Globalization;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Plans.Ideas;

/// <summary>Ideas in a maker's words: the same on screens and in the terminal.</summary>
public static class IdeaWords
{
    private const double CubicMillimetresPerCubicInch = 25.4 * 25.4 * 25.4;
    private const int MostNamed = 8;
    private const int MostTitles = 4;

    /// <summary>How many there are and how sure that is: <c>7, the most there can be</c>.</summary>
    public static string Number(Proposal proposal)
    {
        ArgumentNullException.ThrowIfNull(proposal);
        return proposal switch
        {
            { IsProven: true } => $"{proposal.Count}, the most there can be",
            { AtMost: { } most } => $"{proposal.Count} found, at most {most} can be had",
            _ => $"{proposal.Count} found, there may be more",
        };
    }

    /// <summary>What a proposal takes: wood, clamp loads, and offcuts that are gone after it.</summary>
    /// <param name="proposal">The proposal.</param>
    /// <param name="shop">The shop.</param>
    public static string Takes(Proposal proposal, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(proposal);
        ArgumentNullException.ThrowIfNull(shop);
        return $"{Wood(proposal.WoodUsed, shop.Unit)} of wood, {Wood((long)proposal.InGifts.CubicMillimetres, shop.Unit)} of it in the gifts; {Count(Math.Abs(proposal.ClampLoads), "clamp load")}{(proposal.ClampLoads < 0 ? " fewer than now" : "")}.";
    }

    /// <summary>The offcuts that are gone after it, in one sentence.</summary>
    public static string UsedUp(Proposal proposal)
    {
        ArgumentNullException.ThrowIfNull(proposal);
        return proposal.UsedUp.IsEmpty
            ? "No offcut is used up."
            : $"{Count(proposal.UsedUp.Length, "offcut")} used up: {Named(proposal.UsedUp)}.";
    }

    /// <summary>What the offcut would be, and for which gift.</summary>
    public static string Name(OffcutUse use)
    {
        ArgumentNullException.ThrowIfNull(use);
        var role = use.IsSolid ? use.Part : $"strips of the {use.Part}";
        return use.New is null ? $"{use.Gift}: {role}" : $"A new gift, {use.Title}: {role}";
    }

    /// <summary>What that makes of the plan, against leaving the offcut alone.</summary>
    /// <param name="use">The use.</param>
    /// <param name="shop">The shop.</param>
    public static string Say(OffcutUse use, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(use);
        ArgumentNullException.ThrowIfNull(shop);
        var d = use.Difference;
        string[] changes =
        [
            .. d.Gained.IsEmpty ? [] : new[] { $"{Named(d.Gained)} can only be made with it" },
            .. d.Lost.IsEmpty ? [] : new[] { $"{Named(d.Lost)} could not be made then" },
            .. d.Looks == 0 ? [] : new[] { $"{Count((int)Math.Abs(d.Looks), "point")} of looks {More(d.Looks)}" },
            .. Wood(Math.Abs(d.Wood), shop.Unit) is var wood && wood == Wood(0, shop.Unit) ? [] : new[] { $"{wood} of wood {More(d.Wood)}" },
            .. d.ClampLoads == 0 ? [] : new[] { $"{Count((int)Math.Abs(d.ClampLoads), "clamp load")} {(d.ClampLoads > 0 ? "more" : "fewer")}" },
        ];
        var against = changes.Length == 0 ? "As good as leaving it alone" : $"Against leaving it alone: {string.Join(", ", changes)}";
        return $"{against}. {use.ShareInGiftsPerMille / 10} % of it ends in gifts.{(use.IsProven ? "" : " More time might find better.")}";
    }

    /// <summary>What is bought: <c>a board of walnut, 36 in × 6 in × 1 in</c>.</summary>
    /// <param name="purchase">The purchase.</param>
    /// <param name="shop">The shop.</param>
    /// <exception cref="ArgumentException">Neither a board nor clamps.</exception>
    public static string NameOf(Purchase purchase, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(purchase);
        ArgumentNullException.ThrowIfNull(shop);
        var style = new LengthStyle { Unit = shop.Unit, Denominator = shop.Denominator };
        string Text(Length length) => LengthFormatter.Format(length, style);
        return purchase switch
        {
            { Board: { } b } => $"a board of {SpeciesTable.NameOf(b.Species)}, {Text(b.Length)} × {Text(b.Width)} × {Text(b.Thickness)}",
            { Clamps: { } c } => $"{(c.Count == 1 ? "one" : c.Count == 2 ? "two" : $"{c.Count}")} more {c.Name}{(c.Count == 1 ? "" : "s")}, reach {Text(c.Reach)}",
            _ => throw new ArgumentException("Neither a board nor clamps.", nameof(purchase)),
        };
    }

    /// <summary>What a purchase makes possible.</summary>
    public static string Say(Purchase purchase)
    {
        ArgumentNullException.ThrowIfNull(purchase);
        return purchase.Unlocks.IsEmpty
            ? "Nothing more can be made with it."
            : $"Makes {Count(purchase.Unlocks.Length, "gift")} possible: {Named(purchase.Unlocks)}.{(purchase.IsNeeded ? "" : " With more time the plan might do without it.")}";
    }

    /// <summary>What the time was too short for; empty when everything was tried.</summary>
    public static string NotTried(IdeasAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return answer.NotTried.IsEmpty ? "" : $"No time was left for {Count(answer.NotTried.Length, "idea")}: {Named(answer.NotTried, MostTitles, "; ")}. Ask again with more time.";
    }

    /// <summary>What was kept back because the recipient has had it, or that it was not; empty when they have had nothing.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="titles">Titles of the designs they have had.</param>
    public static string Had(IdeasAnswer answer, IEnumerable<string> titles)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (answer.Question.Kind != IdeasKind.Gifts || answer.Question.Had.IsEmpty) return "";
        var named = Named(titles);
        return answer.IsHadBefore
            ? $"{answer.Question.Recipient} has had all of this before: nothing else can be made."
            : $"Not proposed, because {answer.Question.Recipient} has had it: {named}.";
    }

    /// <summary>What there is nothing to be said about, in one sentence; empty when there is something.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="shop">The shop.</param>
    public static string Nothing(IdeasAnswer answer, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(shop);
        return answer.Question.Kind switch
        {
            IdeasKind.Gifts when answer.Proposals.IsEmpty && answer.NotTried.IsEmpty => answer.Planned.IsEmpty ? "This pile gives none of the designs." : "What the gifts on the list leave gives nothing more.",
            IdeasKind.Offcut when answer.Uses.IsEmpty && answer.NotTried.IsEmpty => $"{answer.Question.Offcut} {(answer.Boards.IsEmpty ? "is of no use for any gift or design." : "alone is of no use for any gift or design.")}{Why(answer, shop)}",
            IdeasKind.Purchase when answer.Unmade.IsEmpty && answer.NotTried.IsEmpty => "Everything that is wanted is made: nothing has to be bought.",
            IdeasKind.Purchase when answer.Purchases.All(p => p.Unlocks.IsEmpty) && answer.NotTried.IsEmpty => $"None of {Count(answer.Purchases.Length, "purchase")} that {(answer.Purchases.Length == 1 ? "was" : "were")} tried makes anything more possible.",
            _ => "",
        };
    }

    private static string Why(IdeasAnswer answer, Shop shop)
    {
        var style = new LengthStyle { Unit = shop.Unit, Denominator = shop.Denominator };
        string[] reasons = [.. answer.Reasons.OfType<Reason.Pinned>().DistinctBy(r => r.Fault).Select(r => ReasonText.Of(r, style)).Distinct()];
        var board = answer.Reasons.OfType<Reason.MissingBoard>().OrderBy(b => b.Length).FirstOrDefault();
        var isThin = answer.Reasons.OfType<Reason.Pinned>().Any(r => r.Fault == PinFault.TooThin);
        var faced = !answer.Boards.IsEmpty ? $" Glued face to face it would serve: {Named(answer.Boards)}. A plan does so where it makes a gift possible or spares wood."
            : isThin ? " No other thin offcut of its wood makes up for it, glued face to face." : "";
        return $"{(reasons.Length == 0 ? "" : $" It {string.Join("; or ", reasons)}.")}{(board is null ? "" : $" Solid parts take {ReasonText.Write(board, style)}.")}{faced}";
    }

    private static string More(long change) => change > 0 ? "more" : "less";

    private static string Named(IEnumerable<string> all, int most = MostNamed, string comma = ", ")
    {
        var names = all.ToArray();
        return $"{string.Join(comma, names.Take(most))}{(names.Length > most ? $" and {names.Length - most} more" : "")}";
    }

    private static string Count(int count, string what) => $"{count} {what}{(count == 1 ? "" : "s")}";

    private static string Wood(long cubicMillimetres, LengthUnit unit) => unit == LengthUnit.Inch
        ? string.Create(CultureInfo.InvariantCulture, $"{cubicMillimetres / CubicMillimetresPerCubicInch:0.0} in³")
        : string.Create(CultureInfo.InvariantCulture, $"{cubicMillimetres / 1000.0:0} cm³");
}
