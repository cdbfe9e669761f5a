using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Fits;

/// <summary>Works a fit out month by month, and back to the openings that would do.</summary>
internal sealed class FitYear
{
    private readonly FitSides sides;
    private readonly Climate fittedIn;
    private readonly Climate livesIn;
    private readonly Length least;
    private readonly Length? most;
    private readonly int fittedMonth;
    private readonly bool assumed;
    private readonly double fittedPercent;
    private readonly ImmutableArray<MonthMoves> moves;

    internal FitYear(FitSides sides, Climate fittedIn, int? month, Climate livesIn, Length least, Length? most)
    {
        ArgumentNullException.ThrowIfNull(fittedIn);
        ArgumentNullException.ThrowIfNull(livesIn);
        (this.sides, this.fittedIn, this.livesIn, this.least, this.most) = (sides, fittedIn, livesIn, least, most);
        assumed = month is null;
        fittedMonth = month ?? Driest(fittedIn);
        fittedPercent = fittedIn.MoisturePercent(fittedMonth);
        // Definition: twelve months.
        moves = [.. Enumerable.Range(1, 12).Select(m => MonthMoves.Of(sides, m, fittedPercent, livesIn.MoisturePercent(m)))];
    }

    /// <summary>The driest month of a climate, the first of equals; twelve by definition.</summary>
    internal static int Driest(Climate climate) => Enumerable.Range(1, 12).MinBy(climate.MoisturePercent);

    /// <param name="option">The option that sets the clearance, or null.</param>
    /// <param name="mark">The maker's finest mark, on which the option's value shall lie; zero for none.</param>
    internal SeasonFit Work(FitOption? option, Length mark)
    {
        var months = moves.Select(m => m.At(sides.Opening, sides)).ToImmutableArray();
        var smallest = Smallest(opening => moves.All(m => m.At(opening, sides).Clearance >= least), least - months.Min(m => m.Clearance));
        // One above the largest is the smallest that rattles.
        var largest = most is { } limit
            ? Smallest(opening => moves.Any(m => m.At(opening, sides).MostClearance > limit), limit - months.Max(m => m.MostClearance)) - Length.FromPicometres(1)
            : (Length?)null;
        return new()
        {
            Opening = sides.Opening,
            Held = sides.HeldSize,
            Least = least,
            Most = most,
            FittedIn = fittedIn,
            FittedMonth = fittedMonth,
            FittedMonthIsAssumed = assumed,
            FittedMoisturePercent = fittedPercent,
            LivesIn = livesIn,
            Months = months,
            SmallestOpening = smallest,
            LargestOpening = largest,
            Verdict = Judge(months, smallest, largest),
            Setting = option is null ? null : Set(option, smallest, largest, mark),
        };
    }

    private FitVerdict Judge(ImmutableArray<FitMonth> months, Length smallest, Length? largest)
    {
        ImmutableArray<int> tight = [.. months.Where(m => m.Clearance < least).Select(m => m.Month)];
        ImmutableArray<int> loose = [.. months.Where(m => m.MostClearance > most).Select(m => m.Month)];
        if (tight.IsEmpty && loose.IsEmpty) return new FitVerdict.Good();
        if (smallest > largest) return new FitVerdict.CannotBeBoth(tight, loose, smallest - largest.Value);
        if (loose.IsEmpty)
        {
            var tightest = months.Min(m => m.Clearance);
            return new FitVerdict.Jams(tight, least - tightest, tightest.IsNegative);
        }

        return new FitVerdict.Rattles(loose, months.Max(m => m.MostClearance) - most!.Value);
    }

    // As little changed as will do, on a mark where one lies in the range. Where both cannot be had, what must not jam comes first.
    private FitSetting? Set(FitOption option, Length smallest, Length? largest, Length mark)
    {
        if (sides.Opening >= smallest && !(sides.Opening > largest)) return null;
        var narrower = sides.Opening > largest && smallest <= largest;
        var rounding = narrower ? Rounding.Down : Rounding.Up;
        var exact = ((narrower ? largest!.Value : smallest) - sides.HeldSize).Divide(option.Shares, rounding);
        var marked = mark.IsPositive ? exact.RoundTo(mark, rounding) : exact;
        var opening = sides.HeldSize + (marked * option.Shares);
        return new(option.Key, smallest > largest || (opening >= smallest && !(opening > largest)) ? marked : exact);
    }

    /// <summary>The smallest opening for which something holds that holds for every larger one, begun near a guess of how far it is from the present one.</summary>
    private Length Smallest(Func<Length, bool> holds, Length guess)
    {
        var step = Length.FromMicrometres(10);
        var high = sides.Opening + guess;
        while (!holds(high)) (high, step) = (high + step, step * 2);
        step = Length.FromMicrometres(10);
        var low = high - step;
        while (holds(low)) (high, low, step) = (low, low - (step * 2), step * 2);
        while ((high - low).Picometres > 1)
        {
            var middle = low + (high - low).Divide(2, Rounding.Down);
            if (holds(middle)) high = middle;
            else low = middle;
        }

        return high;
    }
}
