using CsCheck;
using Scrapwright.Core.Fits;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;
using static Scrapwright.Core.Tests.Designs.Derivation;

namespace Scrapwright.Core.Tests.Fits;

public sealed class PlanFitsTests
{
    // The maker does what the remedy says, and the plan made anew holds.
    [Theory]
    [InlineData("rod-stand", "clearance", "1/64 in", "0 in")]
    [InlineData("rod-stand", "clearance", "1/4 in", "3/16 in")]
    [InlineData("rod-stand", "clearance", "1/4 in", "0.0757 in")]
    [InlineData("u-stand", "clearance", "1/64 in", "0 in")]
    [InlineData("u-stand", "clearance", "5/16 in", "1/8 in")]
    public void The_value_to_set_cures_the_fit(string family, string option, string value, string most)
    {
        var bad = PlanFits.Of(Stand(family, (option, value), ("most-clearance", most)))[0].Season;

        Assert.IsNotType<FitVerdict.Good>(bad.Verdict);
        var set = bad.Setting!;
        var good = PlanFits.Of(Stand(family, (set.Option, Text(set.Value)), ("most-clearance", most)))[0].Season;

        Assert.Equal(option, set.Option);
        Assert.IsType<FitVerdict.Good>(good.Verdict);
        Assert.Null(good.Setting);
        // The last needs 0.0703 in and may have 0.0757, both sides together: 1/32 in each side is too little, 2/32 too much, so it goes by a calliper.
        var mark = most == "0.0757 in" ? Length.FromPicometres(25_400_000) : Length.FromInches(1, 32);
        Assert.Equal(set.Value, set.Value.RoundTo(mark, Rounding.Down));
        Assert.Equal(most == "0.0757 in", set.Value.RoundTo(Length.FromInches(1, 32), Rounding.Down) != set.Value);
    }

    [Fact]
    public void Of_several_squares_the_one_that_moves_most_counts()
    {
        var plan = PlanFitsReferenceTests.Plan(new Gift { Label = "Tiles", Design = "striped-squares" }, new Gift { Label = "Stand", Design = "rod-stand", Options = Options(("holds", "Tiles")), Climate = "damp" })
            .Offcut("W", "black-walnut").Offcut("B", "american-beech").Make("Tiles", ("square", "W W")).Make("Stand", ("plate", "W W")).Build();
        var calm = PlanFits.Of(plan)[0].Season.Tightest.Clearance;
        var step = plan.Steps[0];
        var beech = step.Works.Select(w => w.In[0] == "Tiles-square3" ? w with { Out = [w.Out[0] with { Lanes = [new("B", w.Out[0].Width)] }] } : w);

        var one = PlanFits.Of(plan with { Steps = [step with { Works = [.. beech] }] })[0].Season;

        // 101.6 · (0.00431 − 0.00274) · 4, [WoodHandbook] Table 13-5.
        Assert.Equal(0.638048, (calm - one.Tightest.Clearance).Millimetres, 1e-6);
    }

    [Fact]
    public void The_month_is_that_of_the_due_date_and_the_air_that_of_the_recipient()
    {
        var gift = new Gift { Label = "U", Design = "u-stand", Due = new DateOnly(2027, 6, 20), Climate = "damp" };
        var dated = Season(gift);
        var bare = Season(gift with { Due = null, Climate = "" });
        var lost = Season(gift with { Climate = "moon" });

        Assert.Equal((6, false, "damp"), (dated.FittedMonth, dated.FittedMonthIsAssumed, dated.LivesIn.Key));
        Assert.Equal((true, "dry"), (bare.FittedMonthIsAssumed, bare.LivesIn.Key));
        Assert.Contains(bare.Notes, n => n.StartsWith("No date: taken as fitted in January", StringComparison.Ordinal));
        Assert.Equal("dry", lost.LivesIn.Key);
        Assert.Contains(lost.Notes, n => n.Contains("“moon”", StringComparison.Ordinal));
        static SeasonFit Season(Gift gift) => PlanFits.Of(PlanFitsReferenceTests.Plan(gift).Offcut("O", "white-oak").Make("U", ("left-upright", "O"), ("base", "O"), ("right-upright", "O"), ("bar", "O")).Build())[0].Season;
    }

    [Fact]
    public void Woods_whose_movement_is_not_known_and_rings_that_nobody_looked_at_are_told()
    {
        var plan = PlanFitsReferenceTests.Plan(new Gift { Label = "U", Design = "u-stand", Options = Options(("with-squares", "yes")) })
            .Offcut("I", "ipe", RingOrientation.Unknown).Make("U", ("left-upright", "I"), ("base", "I"), ("right-upright", "I"), ("bar", "I"), ("square", "I I I")).Build();

        var notes = PlanFits.Of(plan)[0].Season.Notes;

        Assert.Contains(notes, n => n.Contains("ipe", StringComparison.OrdinalIgnoreCase) && n.Contains("beech", StringComparison.Ordinal));
        Assert.Contains(notes, n => n.Contains("growth rings", StringComparison.Ordinal));
    }

    [Fact]
    public void Gifts_without_an_opening_have_no_fit() =>
        Assert.Empty(PlanFits.Of(PlanFitsReferenceTests.Plan(new Gift { Label = "Tiles", Design = "striped-squares" }).Offcut("W", "black-walnut").Make("Tiles", ("square", "W W")).Build()));

    [Theory]
    [InlineData(new[] { 7 }, "July")]
    [InlineData(new[] { 6, 7, 8 }, "June to August")]
    [InlineData(new[] { 3, 5, 6 }, "March, May to June")]
    [InlineData(new[] { 1, 2, 11, 12 }, "November to February")]
    [InlineData(new[] { 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12 }, "every month")]
    public void Months_in_words(int[] months, string words) => Assert.Equal(words, FitWords.Months([.. months]));

    [Fact]
    public void Clearances_are_told_as_a_calliper_reads_them()
    {
        Assert.Equal("0.062 in", FitWords.Fine(Length.FromInches(1, 16), new Shop(), Rounding.Down));
        Assert.Equal("−0.063 in", FitWords.Fine(-Length.FromInches(1, 16), new Shop(), Rounding.Down));
        Assert.Equal("1.59 mm", FitWords.Fine(Length.FromInches(1, 16), new Shop { Unit = LengthUnit.Millimetre }, Rounding.Nearest));
    }

    [Fact]
    public void A_verdict_and_its_remedy_name_months_and_sizes()
    {
        var plan = Stand("rod-stand", ("clearance", "1/64 in"));
        var fit = PlanFits.Of(plan)[0];

        // 1/64 in each side is 0.79375; the square takes 1.274064 and the rods 0.115824 of it, and 1/64 in is wanted: 0.993013 mm or 0.0391 in short.
        Assert.Equal("Jams in every month: 0.040 in short of the least clearance.", FitWords.Verdict(fit.Season, plan.Request.Shop));
        Assert.Equal("Make it at least 4 3/32 in between the front rods. Set clearance to 1/16 in.", FitWords.Remedy(fit.Fit, fit.Season, plan.Request.Shop));
    }

    [Fact]
    public void Months_that_are_stuck_are_told_apart_from_those_that_are_tight()
    {
        // 100 · 0.00353 · 4 = 1.412 in July, 1.059 in June and August, 0.353 in May and September: of 1.2 nothing is left, 0.141 and 0.847.
        var trial = new FitTrial
        {
            Holder = [Airs.Still(101.2)],
            Held = [Airs.Across("sugar-maple", RingOrientation.Flat, 100)],
            FittedIn = Airs.Steady(8),
            LivesIn = Airs.Year(8, 8, 8, 8, 9, 11, 12, 11, 9, 8, 8, 8),
            Least = Length.FromMicrometres(500),
        };

        Assert.Equal("Jams in July, too tight in June, August: 0.72 mm short of the least clearance.", FitWords.Verdict(SeasonFit.Between(trial), new Shop { Unit = LengthUnit.Millimetre }));
    }

    private static Plan Stand(string family, params (string Key, string Value)[] options)
    {
        var plan = PlanFitsReferenceTests.Plan(new Gift { Label = "S", Design = family, Options = Options([("with-squares", "yes"), .. options]), Climate = "damp" })
            .Offcut("W", "black-walnut").Offcut("M", "sugar-maple");
        return (family == "rod-stand"
            ? plan.Make("S", ("plate", "W W"), ("square", "W M"))
            : plan.Make("S", ("left-upright", "W"), ("base", "W"), ("right-upright", "W"), ("bar", "W"), ("square", "W M"))).Build();
    }
}
