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

    internal FitYear(FitSides sides, MoistureYear fittedIn, int? month, MoistureYear livesIn, Length least, Length? most)
    {
        (this.sides, this.fittedIn, this.livesIn, this.least, this.most) = (sides, fittedIn.Climate, livesIn.Climate, least, most);
        assumed = month is null;
        fittedMonth = month ?? fittedIn.DriestMonth;
        fittedPercent = fittedIn.At(fittedMonth);
        // Definition: twelve months.
        moves = [.. Enumerable.Range(1, 12).Select(m => MonthMoves.Of(sides, m, fittedPercent, livesIn.At(m)))];
    }

    /// <param name="option">The option that sets the clearance, or null.</param>
    /// <param name="marks">The marks on which the option's value shall lie, coarsest first.</param>
    internal SeasonFit Work(FitOption? option, params IReadOnlyList<Length> marks)
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
            Setting = option is null ? null : Set(option, smallest, largest, marks),
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

    // As little changed as will do, on the coarsest mark that lies in the range. Where both cannot be had, what must not jam comes first.
    private FitSetting? Set(FitOption option, Length smallest, Length? largest, IReadOnlyList<Length> marks)
    {
        if (sides.Opening >= smallest && !(sides.Opening > largest)) return null;
        var possible = !(smallest > largest);
        var narrower = sides.Opening > largest && possible;
        var rounding = narrower ? Rounding.Down : Rounding.Up;
        var exact = ((narrower ? largest!.Value : smallest) - sides.HeldSize).Divide(option.Shares, rounding);
        foreach (var mark in marks)
        {
            var marked = exact.RoundTo(mark, rounding);
            var opening = sides.HeldSize + (marked * option.Shares);
            if (!possible || (opening >= smallest && !(opening > largest))) return new(option.Key, marked);
        }

        return new(option.Key, exact);
    }

    /// <summary>The smallest opening for which something holds that holds for every larger one, begun near a guess of how far it is from the present one.</summary>
    private Length Smallest(Func<Length, bool> holds, Length guess)
    {
        // Our own choice: the guess is right to a picometre or two unless the opening's own wood moves.
        var first = Length.FromPicometres(4);
        var step = first;
        var high = sides.Opening + guess;
        while (!holds(high)) (high, step) = (high + step, step * 2);
        step = first;
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
