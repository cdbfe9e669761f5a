using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar.Worth;

/// <summary>Weighs making against buying. Money is compared in seconds times the worth of an hour, so that nothing is divided: 3600 seconds an hour, 60 a minute, by definition.</summary>
internal sealed class WorthMaker
{
    private readonly WorthRequest request;
    private readonly PlanIndex index;
    private readonly WorkTasks work;
    private readonly ImmutableArray<WorkTask> open;
    private readonly PieceUse use;

    internal WorthMaker(WorthRequest request)
    {
        this.request = request;
        index = PlanIndex.Of(request.Plan);
        work = WorkTasks.Of(index, new WorkTaskRules { Paces = ShopPaces.Of(request.Times) });
        var done = work.WithAllBefore(request.Done);
        open = [.. work.Tasks.Where(t => !done.Contains(t.Id))];
        use = new(request.Plan);
    }

    internal WorthAnswer Make()
    {
        var jigs = JigTable.With(request.Jigs);
        ImmutableArray<ThingWorth> things = [.. request.Plan.Made.SelectMany(Things)];
        ImmutableArray<ItemWorth> items = [.. request.Plan.Shopping.Select(Item).OfType<ItemWorth>()];
        return new()
        {
            HourWorth = request.HourWorth,
            Jigs = [.. jigs.Select(Jig).OfType<JigWorth>().OrderByDescending(j => j.SavedMinutes)],
            Things = things,
            Items = items,
            Unmatched = [.. request.Prices.Where(p => !things.Any(t => t.Price == p) && !items.Any(i => i.Price == p) && !jigs.Any(j => p.IsFor(PriceKind.Jig, j.Key, j.Name)))],
        };
    }

    private JigWorth? Jig(Jig jig)
    {
        var pieces = open.Sum(t => JigSaving.Pieces(jig, t));
        var atPieces = open.Sum(t => JigSaving.Seconds(jig, t));
        StationSetting[] settings = [.. JigSaving.Settings(jig, work, open)];
        var atSettings = settings.Sum(s => JigSaving.SetUpSeconds(jig, s));
        if (pieces == 0 || atPieces + atSettings == 0) return null;
        var price = request.Prices.FirstOrDefault(p => p.IsFor(PriceKind.Jig, jig.Key, jig.Name));
        var cost = Cost(jig);
        return new()
        {
            Jig = jig,
            Pieces = pieces,
            SetUps = settings.Length,
            SavedMinutes = (atPieces + atSettings) / 60,
            SavedWorth = Worth(atPieces + atSettings),
            MakeCost = Rounded(request.HourWorth is null ? null : cost / 3600),
            Price = price,
            Verdict = Verdict(jig, atPieces + atSettings, cost, price),
            PiecesToPay = cost is { } once ? BreakEven.Pieces((once - (Each * atSettings)) * pieces, Each * atPieces) : null,
            PlansToPay = cost is { } all ? BreakEven.Pieces(all, Each * (atPieces + atSettings)) : null,
        };
    }

    // A second in the unit that money is compared in: the worth of an hour; one where only time is compared.
    private decimal Each => request.HourWorth?.Amount ?? 1;

    // What making it costs, in that unit; null when it needs material and an hour has no worth.
    private decimal? Cost(Jig jig) => request.HourWorth is null && jig.Material > 0 ? null : (Each * jig.MakeMinutes * 60) + (jig.Material * 3600);

    private WorthVerdict Verdict(Jig jig, int savedSeconds, decimal? cost, Price? price)
    {
        if (jig.IsOwned) return WorthVerdict.Have;
        decimal? byMaking = (Each * savedSeconds) - cost;
        decimal? byBuying = request.HourWorth is null ? null : (Each * savedSeconds) - (price?.Amount * 3600);
        if (byMaking is null || (request.HourWorth is null && price is not null && byMaking <= 0)) return WorthVerdict.Open;
        if (byBuying > 0 && byBuying > byMaking) return WorthVerdict.Buy;
        return byMaking > 0 ? WorthVerdict.Make : WorthVerdict.DoWithout;
    }

    private IEnumerable<ThingWorth> Things(MadeGift made)
    {
        var gift = index.Gift(made.Gift);
        var parts = index.Product(made.Gift)?.Parts ?? [];
        var price = request.Prices.FirstOrDefault(p => p.IsFor(PriceKind.Gift, made.Gift)) ?? request.Prices.FirstOrDefault(p => gift is not null && p.IsFor(PriceKind.Gift, gift.Design));
        if (!open.Any(t => t.Gifts.Contains(made.Gift))) yield break;
        yield return Thing(made.Gift, null, 1, price, parts, t => use.Share(t, made.Gift), t => t.Gifts is [var only] && only == made.Gift);
        foreach (var part in parts)
        {
            if (request.Prices.FirstOrDefault(p => p.IsFor(PriceKind.Part, $"{made.Gift}/{part.Key}", $"{gift?.Design}/{part.Key}")) is not { } each) continue;
            var count = made.Parts.Count(p => p.Part == part.Key);
            if (count > 0) yield return Thing(made.Gift, part, count, each, [part], t => PieceUse.IsPuttingTogether(t) ? 0 : use.Share(t, made.Gift, part.Key), t => use.IsOnlyFor(t, made.Gift, part.Key));
        }
    }

    private ThingWorth Thing(string gift, Part? part, int count, Price? price, ImmutableArray<Part> sizes, Func<WorkTask, decimal> share, Func<WorkTask, bool> isOnly)
    {
        var minutes = (int)decimal.Round(open.Sum(t => t.Minutes * share(t)), MidpointRounding.AwayFromZero);
        var needed = open.Where(t => !isOnly(t)).Select(t => t.Setting).ToHashSet(StringComparer.Ordinal);
        var own = open.Where(isOnly).Select(t => t.Setting).Where(s => !needed.Contains(s)).ToHashSet(StringComparer.Ordinal);
        var setUp = work.Settings.Where(s => own.Contains(s.Key)).Sum(s => s.Minutes);
        var verdict = request.HourWorth is not { } hour || price is null ? WorthVerdict.Open
            : price.Amount * count * 60 < hour.Amount * (minutes + setUp) ? WorthVerdict.Buy : WorthVerdict.Make;
        return new() { Gift = gift, Part = part, Count = count, Minutes = minutes, SetUpMinutes = setUp, MakeCost = Worth((minutes + setUp) * 60), Price = price, Verdict = verdict, Sizes = sizes };
    }

    private ItemWorth? Item(ShoppingItem item)
    {
        var sized = $"{item.What} {item.Size.ToExactText(request.Plan.Request.Shop.Unit)}";
        var price = request.Prices.FirstOrDefault(p => p.IsFor(PriceKind.Item, sized)) ?? request.Prices.FirstOrDefault(p => p.IsFor(PriceKind.Item, item.What));
        return price is null ? null : new(item, price, price.Amount * item.Count);
    }

    private decimal? Worth(int seconds) => Rounded(request.HourWorth?.Amount * seconds / 3600);

    private static decimal? Rounded(decimal? amount) => amount is { } exact ? decimal.Round(exact, 2, MidpointRounding.AwayFromZero) : null;
}
