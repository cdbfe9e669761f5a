using System.Collections.Immutable;
using CsCheck;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Fits;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;
using static Scrapwright.Core.Tests.Fits.Airs;

namespace Scrapwright.Core.Tests.Fits;

public sealed class SeasonFitTests
{
    private static readonly string[] Woods = ["black-walnut", "sugar-maple", "american-beech", "white-oak", "purpleheart", "ipe", "teak"];

    private static readonly Gen<MovingWood> Wood =
        Gen.Select(OneOf(Woods), OneOf(Enum.GetValues<RingOrientation>()), OneOf(Enum.GetValues<GrainDirection>()), Gen.Double[1, 200])
            .Select((species, rings, direction, mm) => new MovingWood(species, rings, direction, Length.FromMillimetresRounded(mm)));

    private static readonly Gen<Climate> Climates = Gen.Double[3, 22].Array[12].Select(m => Year([.. m]));

    private static readonly Gen<FitTrial> Trials =
        Gen.Select(Wood.Array[1, 4], Wood.Array[1, 4], Climates, Climates, Gen.Double[0, 2], Gen.Double[0, 3], Gen.Bool)
            .Select((holder, held, fitted, lives, least, band, turns) => new FitTrial
            {
                Holder = [.. holder],
                Held = [.. held],
                HeldTurns = turns,
                FittedIn = fitted,
                LivesIn = lives,
                Least = Length.FromMillimetresRounded(least),
                Most = Length.FromMillimetresRounded(least + band),
            });

    [Fact]
    public void The_smallest_opening_never_jams_and_a_picometre_less_does() => Trials.Sample(trial =>
    {
        var smallest = SeasonFit.Between(trial).SmallestOpening;

        return SeasonFit.Between(Opened(trial, smallest)).Months.All(m => m.Clearance >= trial.Least)
            && SeasonFit.Between(Opened(trial, smallest - Length.FromPicometres(1))).Months.Any(m => m.Clearance < trial.Least);
    }, iter: 150);

    [Fact]
    public void The_largest_opening_never_rattles_and_a_picometre_more_does() => Trials.Sample(trial =>
    {
        var largest = SeasonFit.Between(trial).LargestOpening!.Value;

        return SeasonFit.Between(Opened(trial, largest)).Months.All(m => m.MostClearance <= trial.Most)
            && SeasonFit.Between(Opened(trial, largest + Length.FromPicometres(1))).Months.Any(m => m.MostClearance > trial.Most);
    }, iter: 150);

    [Fact]
    public void The_verdict_says_what_the_months_say() => Trials.Sample(trial =>
    {
        var season = SeasonFit.Between(trial);
        ImmutableArray<int> tight = [.. season.Months.Where(m => m.Clearance < trial.Least).Select(m => m.Month)];
        ImmutableArray<int> loose = [.. season.Months.Where(m => m.MostClearance > trial.Most).Select(m => m.Month)];
        var possible = season.SmallestOpening <= season.LargestOpening;

        return season.Verdict switch
        {
            FitVerdict.Good => tight.IsEmpty && loose.IsEmpty && possible,
            FitVerdict.Jams jams => possible && loose.IsEmpty && jams.Months.SequenceEqual(tight) && jams.By.IsPositive,
            FitVerdict.Rattles rattles => possible && tight.IsEmpty && rattles.Months.SequenceEqual(loose) && rattles.By.IsPositive,
            FitVerdict.CannotBeBoth both => !possible && both.Tight.SequenceEqual(tight) && both.Loose.SequenceEqual(loose)
                && both.By == season.SmallestOpening - season.LargestOpening,
            _ => false,
        };
    }, iter: 100);

    // A wider piece of the same wood needs at least as much more room as it is wider, less what it can shrink.
    [Fact]
    public void A_wider_piece_needs_a_wider_opening() => Gen.Select(Trials, Gen.Double[0.001, 20]).Sample((trial, more) =>
    {
        var first = trial.Held[0];
        var wider = trial with { Held = trial.Held.SetItem(0, first with { Size = first.Size + Length.FromMillimetresRounded(more) }) };

        return SeasonFit.Between(wider).SmallestOpening > SeasonFit.Between(trial).SmallestOpening;
    }, iter: 100);

    // Damp shop to dry home and back: what one board gains one way it loses the other, but for the second order of the coefficient's own definition.
    [Fact]
    public void Swapping_the_climates_turns_the_movement_round() => Gen.Select(Gen.Double[6, 14], Gen.Double[6, 14], Gen.Double[10, 300]).Sample((one, other, mm) =>
    {
        double Change(double fromPercent, double toPercent) =>
            SeasonFit.Between(new FitTrial
            {
                Holder = [Still(mm + 20)],
                Held = [Across("sugar-maple", RingOrientation.Flat, mm)],
                FittedIn = Steady(fromPercent),
                LivesIn = Steady(toPercent),
            }).Months[3].Held.Millimetres - mm;
        var (there, back) = (Change(one, other), Change(other, one));

        return Math.Abs(there + back) < 1e-6 && Math.Abs(there - (mm * 0.00353 * (other - one))) < 1e-6;
    });

    [Fact]
    public void Everything_ten_times_as_large_has_ten_times_the_clearance() => Trials.Sample(trial =>
    {
        MovingWood Ten(MovingWood wood) => wood with { Size = wood.Size * 10 };
        var small = SeasonFit.Between(trial);

        var large = SeasonFit.Between(trial with { Holder = [.. trial.Holder.Select(Ten)], Held = [.. trial.Held.Select(Ten)], Least = trial.Least * 10, Most = trial.Most!.Value * 10 });

        return Near(small.SmallestOpening * 10, large.SmallestOpening)
            && small.Months.Zip(large.Months).All(m => Near(m.First.Clearance * 10, m.Second.Clearance) && Near(m.First.MostClearance * 10, m.Second.MostClearance));
        static bool Near(Length one, Length other) => (one - other).Abs() <= Length.FromPicometres(60);
    }, iter: 100);

    [Fact]
    public void Wood_in_the_air_it_was_fitted_in_keeps_its_clearance()
    {
        var trial = new FitTrial { Holder = [Still(104)], Held = [Across("white-oak", RingOrientation.Unknown, 100)], FittedIn = Steady(9), LivesIn = Steady(9) };

        Assert.All(SeasonFit.Between(trial).Months, m => Assert.Equal(Length.FromMillimetres(4), m.Clearance));
    }

    [Fact]
    public void What_may_be_turned_is_tight_across_and_loose_along()
    {
        var trial = new FitTrial
        {
            Holder = [Still(104)],
            Held = [Across("white-oak", RingOrientation.Flat, 100)],
            HeldTurns = true,
            FittedIn = Steady(8),
            LivesIn = Year(6, 6, 8, 8, 8, 12, 12, 12, 8, 8, 6, 6),
        };

        var season = SeasonFit.Between(trial);

        // [WoodHandbook] Table 13-5, white oak C_T 0.00365. Damp: across 100 · 0.00365 · 4 = 1.46 more, along none. Dry: across 0.73 less, along none.
        Assert.Equal((2.54, 4), (Round(season.Months[6].Clearance), Round(season.Months[6].MostClearance)));
        Assert.Equal((4, 4.73), (Round(season.Months[0].Clearance), Round(season.Months[0].MostClearance)));
        static double Round(Length length) => Math.Round(length.Millimetres, 6);
    }

    [Fact]
    public void Unknown_rings_hold_between_flat_and_quarter_sawn() => Gen.Select(Trials, OneOf(RingOrientation.Flat, RingOrientation.Rift, RingOrientation.Quarter)).Sample((trial, rings) =>
    {
        MovingWood Cut(MovingWood wood, RingOrientation to) => wood with { Rings = to };
        var unknown = SeasonFit.Between(With(RingOrientation.Unknown));
        var known = SeasonFit.Between(With(rings));

        var one = Length.FromPicometres(4);
        return unknown.Months.Zip(known.Months).All(m => m.First.Clearance <= m.Second.Clearance + one && m.First.MostClearance >= m.Second.MostClearance - one);
        FitTrial With(RingOrientation to) => trial with { Holder = [.. trial.Holder.Select(w => Cut(w, to))], Held = [.. trial.Held.Select(w => Cut(w, to))] };
    }, iter: 100);

    [Fact]
    public void Without_a_month_the_driest_of_the_shop_is_taken()
    {
        var trial = new FitTrial { Holder = [Still(104)], Held = [Still(100)], FittedIn = Year(8, 7, 8, 9, 10, 11, 12, 12, 11, 10, 9, 8), LivesIn = Steady(9) };

        var assumed = SeasonFit.Between(trial);
        var said = SeasonFit.Between(trial with { FittedMonth = 8 });

        Assert.Equal((2, true, 7), (assumed.FittedMonth, assumed.FittedMonthIsAssumed, Math.Round(assumed.FittedMoisturePercent, 6)));
        Assert.Equal((8, false, 12), (said.FittedMonth, said.FittedMonthIsAssumed, Math.Round(said.FittedMoisturePercent, 6)));
    }

    [Fact]
    public void A_fit_needs_two_sides_and_known_species()
    {
        var trial = new FitTrial { Holder = [], Held = [Still(1)], FittedIn = Steady(8), LivesIn = Steady(8) };

        Assert.Throws<ArgumentException>(() => SeasonFit.Between(trial));
        Assert.Throws<ArgumentOutOfRangeException>(() => SeasonFit.Between(trial with { Holder = [Still(2)], FittedMonth = 13 }));
        Assert.Throws<ArgumentException>(() => SeasonFit.Between(trial with { Holder = [Across("walnutt", RingOrientation.Flat, 4)] }));
    }

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static FitTrial Opened(FitTrial trial, Length opening)
    {
        var more = opening - Length.Sum(trial.Holder.Select(w => w.Size));
        return trial with { Holder = trial.Holder.SetItem(0, trial.Holder[0] with { Size = trial.Holder[0].Size + more }) };
    }
}
