using System.Globalization;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Worth;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Calendar.Advice;

/// <summary>What could be bought instead of made, where a price is known, and jigs that would save time.</summary>
internal sealed class WorthVariants
{
    // Those that save most are enough to choose from: our own choice.
    private const int MostJigs = 2;

    private readonly CalendarRequest request;
    private readonly string[] late;
    private readonly WorthAnswer worth;
    private readonly WorthWords words;
    private readonly PieceUse use;

    internal WorthVariants(CalendarRequest request, string[] late)
    {
        (this.request, this.late) = (request, late);
        worth = WorthAnswer.Of(WorthRequest.Of(request));
        use = new(request.Plan);
        words = new(request.HourWorth);
    }

    /// <summary>Gifts and parts that have a price: the late ones first, since buying them helps surest.</summary>
    internal IEnumerable<CalendarVariant> Bought() => worth.Things.Where(t => t.Price is not null).OrderByDescending(t => late.Contains(t.Gift)).Select(Bought);

    /// <summary>The jigs that save most, made first, and bought where they have a price.</summary>
    internal IEnumerable<CalendarVariant> Jigs() => worth.Jigs.Where(j => !j.Jig.IsOwned && j.SavedMinutes > 0).Take(MostJigs).SelectMany(j => j.Price is null ? [Made(j)] : (CalendarVariant[])[Made(j), Bought(j)]);

    private CalendarVariant Bought(ThingWorth thing)
    {
        var name = WorthWords.Name(thing);
        var price = $"for {words.Money(thing.BuyCost!.Value)}, {Here(thing.Price!)}";
        return new(thing.Part is null ? OtherwiseKind.BuyGift : OtherwiseKind.BuyPart, $"{name} bought {price}", $"Would you buy {name} {price}", request)
        {
            Change = problem => BoughtWork.Without(problem, Tasks(problem, thing), $"bought/{thing.Gift}{(thing.Part is { } part ? $"/{part.Key}" : "")}", Day(thing.Price!)),
        };
    }

    private HashSet<string> Tasks(CalendarProblem problem, ThingWorth thing) =>
        [.. problem.Work.Tasks.Where(t => thing.Part is { } part ? use.IsOnlyFor(t, thing.Gift, part.Key) : t.Gifts is [var only] && only == thing.Gift).Select(t => t.Id)];

    private CalendarVariant Made(JigWorth jig) => new(
        OtherwiseKind.MakeJig, $"a {Name(jig)} made first ({WorthWords.Time(jig.Jig.MakeMinutes)})", $"Would you make a {Name(jig)} first ({WorthWords.Time(jig.Jig.MakeMinutes)})", request)
    {
        Change = problem => JigWork.Made(problem, jig.Jig),
    };

    private CalendarVariant Bought(JigWorth jig) => new(
        OtherwiseKind.BuyJig, $"a {Name(jig)} bought for {words.Money(jig.Price!.Amount)}, {Here(jig.Price)}", $"Would you buy a {Name(jig)} for {words.Money(jig.Price.Amount)}, {Here(jig.Price)}", request)
    {
        Change = problem => JigWork.Bought(problem, jig.Jig, Day(jig.Price)),
    };

    private static string Name(JigWorth jig) => jig.Jig.Name.ToLowerInvariant();

    private DateOnly Day(Price price) => DateOnly.FromDateTime(request.Start.DateTime).AddDays(price.Days);

    private string Here(Price price) => price.Days == 0 ? "here at once" : $"here on {Day(price).ToString("dddd d MMMM", CultureInfo.InvariantCulture)}";
}
