using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Plans.Ideas;

/// <summary>
/// The same people again: for each recipient of last time, gifts they have not had. First designs that are new to them, those that fewest of their circle are to get before the others;
/// then designs they had, in two woods of the pile that they did not have them in, those that differ most in colour first. Nothing is put on the list by it.
/// </summary>
public sealed class SameAgain
{
    private const int MostChoices = 6;
    private const int MostPairs = 3;

    private readonly PlanRequest workshop;
    private readonly GiftYears years;
    private readonly Occasion occasion;
    private readonly ImmutableArray<IdeaVariant> variants;
    private readonly ImmutableArray<(string Woods, string Title)> pairs;
    private readonly IdeaLabels labels;
    private readonly List<(string Circle, string Design, string Woods)> taken = [];

    private SameAgain(PlanRequest workshop, GiftYears years, Occasion occasion)
    {
        (this.workshop, this.years, this.occasion) = (workshop, years, occasion);

        // A stand alone has nothing to hold: the variant that makes its squares too comes before it.
        variants =
        [
            .. IdeaVariants.For(workshop).Where(variant => variant.Step <= IdeaStep.OtherChoice)
                .OrderByDescending(variant => variant.Options.ContainsKey(SquareSet.WithSquares)).DistinctBy(variant => variant.Design),
        ];
        pairs = Pairs(workshop);
        labels = new IdeaLabels(workshop.Gifts.Select(gift => gift.Label));
        taken.AddRange(workshop.Gifts.Select(gift => (gift.Circle, gift.Design, WoodsOf(gift.Options))));
    }

    /// <summary>One proposal for each recipient of last time, in the order of that list; empty when nothing was given on it yet.</summary>
    /// <param name="workshop">The workshop: its pile, its gifts, its designs.</param>
    /// <param name="years">Its occasions and what was given.</param>
    /// <param name="occasion">The occasion.</param>
    public static ImmutableArray<AgainProposal> For(PlanRequest workshop, GiftYears years, Occasion occasion)
    {
        ArgumentNullException.ThrowIfNull(workshop);
        ArgumentNullException.ThrowIfNull(years);
        ArgumentNullException.ThrowIfNull(occasion);
        var again = new SameAgain(workshop, years, occasion);
        return [.. years.LastTime(occasion.Name).GroupBy(given => given.Recipient.Trim(), StringComparer.OrdinalIgnoreCase).Select(group => again.Propose([.. group]))];
    }

    private AgainProposal Propose(ImmutableArray<GivenGift> lastTime)
    {
        var recipient = lastTime[0].Recipient.Trim();
        ImmutableArray<string> onList = [.. workshop.Gifts.Where(gift => GiftYears.IsSame(gift.Recipient, recipient) && GiftYears.IsSame(gift.Occasion, occasion.Name)).Select(gift => gift.Label)];
        var choices = NewDesigns(lastTime[0], recipient).Concat(NewWoods(lastTime[0], recipient)).Take(MostChoices).ToImmutableArray();

        // The first is what will be confirmed most likely: the circle's others get something else before it.
        if (onList.IsEmpty && choices.FirstOrDefault() is { } first) taken.Add((first.Gift.Circle, first.Gift.Design, WoodsOf(first.Gift.Options)));
        var label = labels.Next((choices.FirstOrDefault()?.Gift ?? new Gift { Label = "", Design = "gift" }).Design);
        return new(recipient, lastTime, [.. choices.Select(choice => choice with { Gift = choice.Gift with { Label = label } })], onList);
    }

    private IEnumerable<AgainChoice> NewDesigns(GivenGift last, string recipient)
    {
        var known = years.DesignsKnownTo(recipient, workshop.Gifts);
        return variants.Where(variant => !known.Any(key => GiftYears.IsSame(key, variant.Design)))
            .OrderBy(variant => taken.Count(other => last.Circle.Length > 0 && GiftYears.IsSame(other.Circle, last.Circle) && GiftYears.IsSame(other.Design, variant.Design)))
            .Select(variant => new AgainChoice(GiftOf(variant, last, recipient, ""), variant.Title, ""));
    }

    private IEnumerable<AgainChoice> NewWoods(GivenGift last, string recipient)
    {
        var had = years.GivenTo(recipient);

        // What was had longest ago is remembered least.
        foreach (var variant in variants.Where(variant => had.Any(given => GiftYears.IsSame(given.Design, variant.Design)))
            .OrderBy(variant => had.First(given => GiftYears.IsSame(given.Design, variant.Design)).Date))
        {
            var theirs = had.Where(given => GiftYears.IsSame(given.Design, variant.Design)).Select(given => WoodsOf(given.Options))
                .Concat(workshop.Gifts.Where(gift => GiftYears.IsSame(gift.Recipient, recipient) && GiftYears.IsSame(gift.Design, variant.Design)).Select(gift => WoodsOf(gift.Options)))
                .Concat(taken.Where(other => last.Circle.Length > 0 && GiftYears.IsSame(other.Circle, last.Circle) && GiftYears.IsSame(other.Design, variant.Design)).Select(other => other.Woods))
                .ToHashSet(StringComparer.Ordinal);
            foreach (var (woods, title) in pairs.Where(pair => !theirs.Contains(pair.Woods)).Take(MostPairs))
                yield return new(GiftOf(variant, last, recipient, woods), $"{variant.Title}, in {title}", title);
        }
    }

    private Gift GiftOf(IdeaVariant variant, GivenGift last, string recipient, string woods) => variant.ToGift("", 2) with
    {
        Recipient = recipient,
        Circle = last.Circle,
        Occasion = occasion.Name,
        Options = woods.Length == 0 ? variant.Options : variant.Options.SetItem(PanelLook.Species, string.Join('+', woods.Split('+').Select(SpeciesTable.NameOf))),
    };

    private static string WoodsOf(ImmutableSortedDictionary<string, string> options) => options.TryGetValue(PanelLook.Species, out var text) ? GiftLikeness.Woods(text) : "";

    /// <summary>Every two woods of the pile, those that differ most in colour first.</summary>
    private static ImmutableArray<(string Woods, string Title)> Pairs(PlanRequest workshop)
    {
        var woods = workshop.Pile.Select(offcut => offcut.Species).Distinct(StringComparer.Ordinal).Select(SpeciesTable.FindKey).OfType<Species>().OrderBy(species => species.Key, StringComparer.Ordinal).ToArray();
        return
        [
            .. woods.SelectMany((one, i) => woods.Skip(i + 1).Select(other => (One: one, Other: other)))
                .OrderByDescending(pair => ColourDifference.Ciede2000(pair.One.Colour, pair.Other.Colour))
                .Select(pair => ($"{pair.One.Key}+{pair.Other.Key}", $"{pair.One.Name} and {pair.Other.Name}")),
        ];
    }
}
