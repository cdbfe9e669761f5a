using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Fits;

/// <summary>Fits in words, in the maker's units.</summary>
public static class FitWords
{
    /// <summary>Name of a month, 1 to 12.</summary>
    public static string Month(int month) => CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month);

    /// <summary>Months in words: <c>July</c>, <c>June to August</c>, <c>May, July</c>, <c>every month</c>. A run may pass the new year.</summary>
    /// <param name="months">1 to 12, in order.</param>
    public static string Months(ImmutableArray<int> months)
    {
        // Definition: twelve months, here and below.
        if (months.Length == 12) return "every month";
        var runs = new List<(int First, int Last)>();
        foreach (var month in months)
        {
            if (runs.Count > 0 && runs[^1].Last == month - 1) runs[^1] = (runs[^1].First, month);
            else runs.Add((month, month));
        }

        // Definition: December goes on in January.
        if (runs.Count > 1 && runs[0].First == 1 && runs[^1].Last == 12)
        {
            runs[^1] = (runs[^1].First, runs[0].Last);
            runs.RemoveAt(0);
        }

        return string.Join(", ", runs.Select(r => r.First == r.Last ? Month(r.First) : $"{Month(r.First)} to {Month(r.Last)}"));
    }

    /// <summary>A clearance as a calliper reads it: thousandths of an inch or hundredths of a millimetre.</summary>
    /// <param name="length">The clearance, of either sign.</param>
    /// <param name="shop">The shop, for its unit.</param>
    /// <param name="rounding">Where a value between two marks goes.</param>
    public static string Fine(Length length, Shop shop, Rounding rounding = Rounding.Nearest)
    {
        ArgumentNullException.ThrowIfNull(shop);
        var inch = shop.Unit == LengthUnit.Inch;
        var mark = FineMark(shop);
        var marks = length.RoundTo(mark, rounding).Picometres / mark.Picometres;
        var number = inch ? (marks / 1000m).ToString("0.000", CultureInfo.InvariantCulture) : (marks / 100m).ToString("0.00", CultureInfo.InvariantCulture);
        return $"{number.Replace('-', '−')} {(inch ? "in" : "mm")}";
    }

    /// <summary>A change of width: <c>0.072 in wider</c>, rounded up; empty when there is none.</summary>
    public static string Change(Length change, Shop shop) =>
        change.IsZero ? "" : $"{Fine(change.Abs(), shop, Rounding.Up)} {(change.IsNegative ? "narrower" : "wider")}";

    /// <summary>A moisture content to a tenth of a per cent, which is more than it is worth.</summary>
    public static string Percent(double percent) => percent.ToString("0.0", CultureInfo.InvariantCulture) + " %";

    /// <summary>The verdict in one line.</summary>
    public static string Verdict(SeasonFit season, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(season);
        return season.Verdict switch
        {
            FitVerdict.Good => $"Good all year: from {Fine(season.Tightest.Clearance, shop, Rounding.Down)} ({Month(season.Tightest.Month)}) to {Fine(season.Loosest.MostClearance, shop, Rounding.Up)} ({Month(season.Loosest.Month)}).",
            FitVerdict.Jams jams => $"{Tight(season, jams)}: {Fine(jams.By, shop, Rounding.Up)} short of the least clearance.",
            FitVerdict.Rattles rattles => $"Rattles in {Months(rattles.Months)}: {Fine(rattles.By, shop, Rounding.Up)} over the most clearance.",
            FitVerdict.CannotBeBoth both => $"Cannot be both: {Join(both)}. The wood moves {Fine(both.By, shop, Rounding.Up)} more than least and most clearance allow.",
            _ => throw new InvalidOperationException($"Not known: {season.Verdict}."),
        };
    }

    /// <summary>What to do about it, in one or two sentences.</summary>
    /// <param name="fit">The fit, for its names.</param>
    /// <param name="season">How it stands through the year.</param>
    /// <param name="shop">The shop, for its unit.</param>
    public static string Remedy(Fit fit, SeasonFit season, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(fit);
        ArgumentNullException.ThrowIfNull(season);
        var setting = season.Setting is { } set ? $" Set {set.Option} to {Setting(set.Value, shop)}." : "";
        return season.Verdict switch
        {
            FitVerdict.Good => "Nothing to change.",
            FitVerdict.Jams => $"Make it at least {Smallest(season, shop)} {fit.Title}.{setting}",
            FitVerdict.Rattles => $"Make it at most {Largest(season, shop)} {fit.Title}.{setting}",
            _ => $"Allow more clearance, or make {fit.HeldTitle} of wood that moves less: quarter sawn, or another species. Until then see that it never jams.{setting}",
        };
    }

    /// <summary>The smallest opening that never jams, rounded up: on a mark of the rule, or of a calliper where the rule is too coarse for the range.</summary>
    public static string Smallest(SeasonFit season, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(season);
        return IsCoarse(season, shop) ? Fine(season.SmallestOpening, shop, Rounding.Up) : Size(season.SmallestOpening, shop, Rounding.Up);
    }

    /// <summary>The largest opening that never rattles, rounded down in the same way; empty when there is none.</summary>
    public static string Largest(SeasonFit season, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(season);
        if (season.LargestOpening is not { } largest) return "";
        return IsCoarse(season, shop) ? Fine(largest, shop, Rounding.Down) : Size(largest, shop, Rounding.Down);
    }

    /// <summary>The finest mark of the maker's rule: a fraction of an inch, or a tenth of a millimetre.</summary>
    internal static Length RuleMark(Shop shop) => new LengthStyle { Unit = shop.Unit, Denominator = shop.Denominator }.FinestMark;

    /// <summary>A calliper's mark: a thousandth of an inch, or a hundredth of a millimetre. Definition.</summary>
    internal static Length FineMark(Shop shop) => shop.Unit == LengthUnit.Inch ? Length.FromPicometres(25_400_000) : Length.FromMicrometres(10);

    // No mark of the rule lies between smallest and largest, though they are not the wrong way round.
    private static bool IsCoarse(SeasonFit season, Shop shop) => season.LargestOpening is { } largest && season.SmallestOpening <= largest
        && season.SmallestOpening.RoundTo(RuleMark(shop), Rounding.Up) > largest;

    private static string Setting(Length value, Shop shop) => value.RoundTo(RuleMark(shop), Rounding.Down) == value ? Size(value, shop) : Fine(value, shop);

    /// <summary>A size to set, in the shop's unit; ≈ where its rule has no such mark.</summary>
    internal static string Size(Length length, Shop shop, Rounding rounding = Rounding.Nearest) =>
        LengthFormatter.Format(length, new LengthStyle { Unit = shop.Unit, Denominator = shop.Denominator, Rounding = rounding, Approximate = rounding == Rounding.Nearest });

    private static string Tight(SeasonFit season, FitVerdict.Jams jams)
    {
        ImmutableArray<int> stuck = [.. season.Months.Where(m => m.Clearance.IsNegative).Select(m => m.Month)];
        ImmutableArray<int> tight = [.. jams.Months.Except(stuck)];
        return (stuck, tight) switch
        {
            ({ IsEmpty: true }, _) => $"Too tight in {Months(tight)}",
            (_, { IsEmpty: true }) => $"Jams in {Months(stuck)}",
            _ => $"Jams in {Months(stuck)}, too tight in {Months(tight)}",
        };
    }

    private static string Join(FitVerdict.CannotBeBoth both) => (both.Tight, both.Loose) switch
    {
        ({ IsEmpty: true }, var loose) => $"it rattles in {Months(loose)}",
        (var tight, { IsEmpty: true }) => $"it jams in {Months(tight)}",
        (var tight, var loose) => $"it jams in {Months(tight)} and rattles in {Months(loose)}",
    };
}
