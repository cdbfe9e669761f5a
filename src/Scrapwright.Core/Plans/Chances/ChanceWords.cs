using System.Globalization;

namespace Scrapwright.Core.Plans.Chances;

/// <summary>Chances as people say them, with the number beside.</summary>
public static class ChanceWords
{
    /// <summary>Odds in words, never better than the chance is: "19 times in 20".</summary>
    /// <param name="perMille">The chance in thousandths, 0 to 1000.</param>
    public static string Odds(int perMille) => perMille switch
    {
        >= 1000 => "nearly always",
        >= 999 => "999 times in 1000",
        >= 995 => "199 times in 200",
        >= 990 => "99 times in 100",
        >= 980 => "49 times in 50",
        >= 950 => "19 times in 20",
        >= 900 => "9 times in 10",
        >= 800 => "4 times in 5",
        >= 750 => "3 times in 4",
        >= 667 => "2 times in 3",
        >= 500 => "1 time in 2",
        _ => "less than 1 time in 2",
    };

    /// <summary>The number itself: "95.3 %". Rounded down to a tenth of a per cent; what would read as certain is "over 99.9 %".</summary>
    /// <param name="perMille">The chance in thousandths, 0 to 1000.</param>
    public static string Percent(int perMille) =>
        perMille >= 1000 ? "over 99.9 %" : string.Create(CultureInfo.InvariantCulture, $"{perMille / 10.0:0.0} %");

    /// <summary>Both: "19 times in 20 (95.3 %)".</summary>
    /// <param name="perMille">The chance in thousandths, 0 to 1000.</param>
    public static string Both(int perMille) => $"{Odds(perMille)} ({Percent(perMille)})";

    /// <summary>The sizes one by one: "width 99.2 %, thickness 99.9 %, length 98.1 %".</summary>
    public static string Sizes(SizeChances sizes)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        return $"width {Of(sizes.Width)}, thickness {Of(sizes.Thickness)}, length {Of(sizes.Length)}";

        static string Of(double share) => Percent(SizeChances.ToPerMille(share));
    }
}
