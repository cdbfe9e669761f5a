using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Chances;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Sheets;

/// <summary>The words that sheets and screens use for what a plan holds.</summary>
public static class PlanWords
{
    /// <summary>Name of a station.</summary>
    public static string Of(Station station) => ShopWords.Of(station);

    /// <summary>What an operation asks the maker to do.</summary>
    public static string Of(Operation operation) => ShopWords.Of(operation);

    /// <summary>What a workaround asks the maker to do; empty for none.</summary>
    public static string Of(Workaround workaround) => workaround switch
    {
        Workaround.None => "",
        Workaround.HandTool => "Not at this machine: hand plane or hand saw.",
        Workaround.CarrierSled => "Too small alone: on a carrier sled or board.",
        Workaround.Gang => "Too small alone: gang it with others or between longer rails.",
        _ => throw new ArgumentOutOfRangeException(nameof(workaround), workaround, "Unknown workaround."),
    };

    /// <summary>How a strip's heart side lies; empty when it may lie as it comes.</summary>
    public static string HeartOf(Plans.Strip strip)
    {
        ArgumentNullException.ThrowIfNull(strip);
        return strip.HeartUp switch
        {
            true => "heart up",
            false => "heart down",
            null => "",
        };
    }

    /// <summary>How a strip has to lie: its heart side, and whether it is turned over; empty when it may lie as it comes.</summary>
    public static string LieOf(Plans.Strip strip)
    {
        ArgumentNullException.ThrowIfNull(strip);
        return string.Join(", ", new[] { HeartOf(strip), strip.TurnedOver ? "turn over" : "" }.Where(t => t.Length > 0));
    }

    /// <summary>A chance in words with the number beside, which stays on one line with its sign.</summary>
    /// <param name="perMille">The chance in thousandths, 0 to 1000.</param>
    public static string Chance(int perMille) => ChanceWords.Both(perMille).Replace(" %", $"{Typesetting.Tie}%", StringComparison.Ordinal);

    /// <summary>Minutes as people say them: "45 min", "1 h 30 min", "1 day".</summary>
    public static string Minutes(int minutes) => minutes switch
    {
        < 60 => $"{minutes} min",
        >= 1440 when minutes % 1440 == 0 => minutes == 1440 ? "1 day" : $"{minutes / 1440} days",
        _ when minutes % 60 == 0 => $"{minutes / 60} h",
        _ => $"{minutes / 60} h {minutes % 60} min",
    };

    /// <summary>The gifts a glue-up is for; of those that share it, how many pieces each further one gets.</summary>
    public static string Gifts(GlueUp glueUp) => Gifts(glueUp, gift => gift);

    /// <summary>The same with each gift called as one likes.</summary>
    public static string Gifts(GlueUp glueUp, Func<string, string> nameOf)
    {
        ArgumentNullException.ThrowIfNull(glueUp);
        ArgumentNullException.ThrowIfNull(nameOf);
        return string.Join(", ", glueUp.Also.Select(a => $"{nameOf(a.Gift)} ({a.Pieces})").Prepend(nameOf(glueUp.Gift)));
    }
}
