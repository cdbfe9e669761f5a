using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar.Worth;

/// <summary>Making against buying in plain words: the figures first, then what they say.</summary>
public sealed class WorthWords
{
    private readonly string currency;
    private readonly bool hasHour;

    /// <summary>Words for the answers of a shop.</summary>
    /// <param name="hourWorth">What an hour is worth; null when nobody said.</param>
    public WorthWords(HourWorth? hourWorth) => (currency, hasHour) = (hourWorth?.Currency ?? "", hourWorth is not null);

    /// <summary>An amount in the shop's currency.</summary>
    /// <param name="amount">The amount.</param>
    public string Money(decimal amount) => HourWorth.Text(amount, currency);

    /// <summary>Minutes as people say them: <c>25 min</c>, <c>3 h 20 min</c>.</summary>
    /// <param name="minutes">From zero. [min]. Definition: 60 minutes an hour</param>
    public static string Time(int minutes) => minutes < 60 ? $"{minutes} min" : minutes % 60 == 0 ? $"{minutes / 60} h" : $"{minutes / 60} h {minutes % 60} min";

    /// <summary>What a jig saves and costs.</summary>
    /// <param name="worth">The jig.</param>
    public string Figures(JigWorth worth)
    {
        ArgumentNullException.ThrowIfNull(worth);
        var make = worth.MakeCost is { } cost ? $" ({Money(cost)}{(worth.Jig.Material > 0 ? $", of it {Money(worth.Jig.Material)} to buy" : "")})" : worth.Jig.Material > 0 ? $" and {Money(worth.Jig.Material)}" : "";
        var buy = worth.Price is { } price ? $", {Money(price.Amount)} to buy{Here(price)}" : "";
        return $"saves {Time(worth.SavedMinutes)}{(worth.SavedWorth is { } saved ? $" ({Money(saved)})" : "")} at {Count(worth.Pieces, "piece")} and {Count(worth.SetUps, "set-up")}; {Time(worth.Jig.MakeMinutes)} to make{make}{buy}";
    }

    /// <summary>What the figures of a jig say.</summary>
    /// <param name="worth">The jig.</param>
    public static string Verdict(JigWorth worth)
    {
        ArgumentNullException.ThrowIfNull(worth);
        return worth.Verdict switch
        {
            WorthVerdict.Have => "you have it",
            WorthVerdict.Make => "make it",
            WorthVerdict.Buy => "buy it",
            WorthVerdict.DoWithout => "do without",
            _ => "say what an hour is worth to you, to compare",
        };
    }

    /// <summary>From when on a jig that does not pay for this plan pays; empty where that is not to be said.</summary>
    /// <param name="worth">The jig.</param>
    public static string Pays(JigWorth worth)
    {
        ArgumentNullException.ThrowIfNull(worth);
        return (worth.Verdict is WorthVerdict.DoWithout or WorthVerdict.Open, worth.PiecesToPay, worth.PlansToPay) switch
        {
            (true, { } pieces and > 0, { } plans) => $"made, it pays from {Count(pieces, "piece")}, or after {Count(plans, "plan")} such as this",
            (true, null, { } plans) => $"made, it pays after {Count(plans, "plan")} such as this",
            _ => "",
        };
    }

    /// <summary>What a gift or part takes and costs.</summary>
    /// <param name="worth">The thing.</param>
    public string Figures(ThingWorth worth)
    {
        ArgumentNullException.ThrowIfNull(worth);
        var setUp = worth.SetUpMinutes > 0 ? $" and {Time(worth.SetUpMinutes)} of setting up" : "";
        var cost = worth.MakeCost is { } amount ? $", worth {Money(amount)}" : "";
        var buy = worth is { Price: { } price, BuyCost: { } all } ? $"; {Money(all)} to buy{(worth.Count > 1 ? $", {Money(price.Amount)} each" : "")}{Here(price)}" : "";
        return $"{Time(worth.Minutes)} of your time left{setUp}{cost}{buy}";
    }

    /// <summary>What the figures of a gift or part say; empty where there is nothing to compare.</summary>
    /// <param name="worth">The thing.</param>
    public string Verdict(ThingWorth worth)
    {
        ArgumentNullException.ThrowIfNull(worth);
        return (worth.Verdict, worth.MakeCost, worth.BuyCost) switch
        {
            (WorthVerdict.Buy, { } make, { } buy) => $"buying costs {Money(make - buy)} less",
            (WorthVerdict.Make, { } make, { } buy) when make == buy => "both cost the same",
            (WorthVerdict.Make, { } make, { } buy) => $"making costs {Money(buy - make)} less",
            (_, { } make, null) => $"buying would pay below {Money(make)}",
            // Without a price there is nothing to compare.
            _ => hasHour || worth.Price is null ? "" : "say what an hour is worth to you, to compare",
        };
    }

    /// <summary>Name of a gift, or of its parts: <c>pond-squares</c>, <c>pond-squares, 4 × square</c>.</summary>
    /// <param name="worth">The thing.</param>
    public static string Name(ThingWorth worth)
    {
        ArgumentNullException.ThrowIfNull(worth);
        return worth.Part is { } part ? $"{worth.Gift}, {worth.Count} × {part.Title}" : worth.Gift;
    }

    /// <summary>What bought ones have to fit: <c>square 101.6 × 101.6 × 9.5 mm</c>.</summary>
    /// <param name="worth">The thing.</param>
    /// <param name="show">How a size is shown.</param>
    public static string Sizes(ThingWorth worth, Func<Length, string> show)
    {
        ArgumentNullException.ThrowIfNull(worth);
        ArgumentNullException.ThrowIfNull(show);
        return string.Join("; ", worth.Sizes.Select(p => $"{p.Title} {show(p.Length)} × {show(p.Width)} × {show(p.Thickness)}"));
    }

    /// <summary>A price with the days until the thing is here.</summary>
    /// <param name="item">What is on the shopping list.</param>
    public string Figures(ItemWorth item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return $"{Money(item.Cost)}{(item.Item.Count > 1 ? $", {Money(item.Price.Amount)} each" : "")}{Here(item.Price)}";
    }

    private static string Here(Price price) => price.Days == 0 ? "" : $", here in {Count(price.Days, "day")}";

    private static string Count(int count, string one) => $"{count} {one}{(count == 1 ? "" : "s")}";
}
