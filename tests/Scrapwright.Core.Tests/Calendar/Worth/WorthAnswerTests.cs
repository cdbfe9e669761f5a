using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Worth;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Tests.Plans;

namespace Scrapwright.Core.Tests.Calendar.Worth;

public sealed class WorthAnswerTests
{
    private static readonly HourWorth Twelve = new(12, "€");

    // One jig for gluing alone: the example has one glue-up of four strips, 14 minutes, set up in 10.
    private static readonly Jig Cauls = new() { Key = "clamping-cauls", Name = "Clamping cauls", Operations = [Operation.GlueUp], SetUpMinutes = 2, EachSeconds = 60, MakeMinutes = 30 };

    [Fact]
    public void A_jig_is_weighed_by_hand()
    {
        // Four strips save 4 min, one set-up 2 min: 6 min, at 12 an hour worth 1.20. Making it: 30 min, 6.00. From 28 pieces on four strips' minutes and the set-up's 2 come to 30; after 5 plans 6 min each do.
        var jig = Find(Answer());

        Assert.Equal((4, 1, 6), (jig.Pieces, jig.SetUps, jig.SavedMinutes));
        Assert.Equal((1.20m, 6.00m), (jig.SavedWorth, jig.MakeCost));
        Assert.Equal((WorthVerdict.DoWithout, 28, 5), (jig.Verdict, jig.PiecesToPay, jig.PlansToPay));
    }

    [Fact]
    public void Material_counts_with_the_time()
    {
        // 30 min and 1.80 are 7.80: 39 min at 12 an hour, less the set-up's 2.
        var jig = Find(Answer(Cauls with { Material = 1.80m }));

        Assert.Equal((7.80m, 37, 7), (jig.MakeCost, jig.PiecesToPay, jig.PlansToPay));
    }

    [Theory]
    [InlineData(5, null, WorthVerdict.Make)]
    [InlineData(6, null, WorthVerdict.DoWithout)]
    [InlineData(30, "1.19", WorthVerdict.Buy)]
    [InlineData(30, "1.20", WorthVerdict.DoWithout)]
    [InlineData(5, "0.90", WorthVerdict.Buy)]
    [InlineData(5, "1.00", WorthVerdict.Make)]
    public void What_costs_least_is_said(int makeMinutes, string? price, WorthVerdict verdict)
    {
        Price[] prices = price is null ? [] : [new(PriceKind.Jig, "clamping-cauls", decimal.Parse(price, System.Globalization.CultureInfo.InvariantCulture), 2)];

        Assert.Equal(verdict, Find(Answer(Cauls with { MakeMinutes = makeMinutes }, Twelve, prices)).Verdict);
    }

    [Fact]
    public void Without_a_worth_of_the_hour_only_minutes_are_compared()
    {
        Assert.Equal(WorthVerdict.Make, Find(Answer(Cauls with { MakeMinutes = 5 }, null)).Verdict);
        Assert.Equal(WorthVerdict.DoWithout, Find(Answer(Cauls, null)).Verdict);
        Assert.Equal(28, Find(Answer(Cauls, null)).PiecesToPay);
        Assert.Equal(WorthVerdict.Open, Find(Answer(Cauls, null, [new(PriceKind.Jig, "clamping-cauls", 1, 0)])).Verdict);
        Assert.Equal(WorthVerdict.Open, Find(Answer(Cauls with { Material = 1 }, null)).Verdict);
        Assert.Null(Find(Answer(Cauls, null)).MakeCost);
    }

    [Fact]
    public void A_jig_the_shop_has_says_so_and_one_that_serves_nothing_is_left_out()
    {
        Assert.Equal(WorthVerdict.Have, Find(Answer(Cauls with { IsOwned = true })).Verdict);
        Assert.DoesNotContain(Answer().Jigs, j => j.Jig.Key == "resaw-fence");
    }

    [Fact]
    public void A_jig_never_takes_more_than_half_of_a_work()
    {
        // 14 minutes of gluing and 10 of setting up: 7 and 5.
        Assert.Equal(12, Find(Answer(Cauls with { EachSeconds = 3600, SetUpMinutes = 60 })).SavedMinutes);
    }

    [Fact]
    public void A_carrier_board_serves_small_pieces_only()
    {
        var small = WorkTasks.Of(ExamplePlans.Squares).Tasks.Where(t => t.Operation == Operation.FaceJoint).ToArray();
        var jig = Cauls with { Key = "push-board", Operations = [Operation.FaceJoint], OnlySmall = true };

        // Three of the four strips are shorter than the jointer asks for.
        Assert.Equal(3, small.Sum(t => t.SmallPieces));
        Assert.Equal(3, Answer(jig).Jigs.Single(j => j.Jig.Key == "push-board").Pieces);
        Assert.Equal(4, Answer(jig with { OnlySmall = false }).Jigs.Single(j => j.Jig.Key == "push-board").Pieces);
    }

    [Fact]
    public void A_gift_for_which_all_work_is_done_takes_the_sum_of_it()
    {
        var work = WorkTasks.Of(ExamplePlans.Squares);

        var gift = Assert.Single(Answer().Things);

        Assert.Equal(("Ida", null, 1), (gift.Gift, gift.Part, gift.Count));
        Assert.Equal((work.Tasks.Sum(t => t.Minutes), work.Settings.Sum(s => s.Minutes)), (gift.Minutes, gift.SetUpMinutes));
        // 12 an hour are 0.20 a minute.
        Assert.Equal(0.20m * (gift.Minutes + gift.SetUpMinutes), gift.MakeCost);
        Assert.Equal(WorthVerdict.Open, gift.Verdict);
        Assert.NotEmpty(gift.Sizes);
    }

    [Fact]
    public void A_gift_is_bought_when_it_costs_less_than_the_time()
    {
        var cost = Answer().Things[0].MakeCost!.Value;

        Assert.Equal(WorthVerdict.Buy, Answer(Cauls, Twelve, [new(PriceKind.Gift, "ida", cost - 0.01m, 3)]).Things[0].Verdict);
        Assert.Equal(WorthVerdict.Make, Answer(Cauls, Twelve, [new(PriceKind.Gift, "Ida", cost, 3)]).Things[0].Verdict);
    }

    [Fact]
    public void A_price_that_fits_nothing_is_told()
    {
        Price[] prices = [new(PriceKind.Gift, "Ida", 5, 3), new(PriceKind.Part, "Ida/sqare", 1, 0), new(PriceKind.Jig, "Resaw fence", 9, 0), new(PriceKind.Item, "drill bit", 6, 0)];

        // The example has no such part and nothing to buy; a jig it has no use for is a jig all the same.
        Assert.Equal([prices[1], prices[3]], Answer(Cauls, Twelve, prices).Unmatched.AsEnumerable());
    }

    [Fact]
    public void Parts_have_the_work_of_their_own_pieces_and_shared_work_by_pieces()
    {
        var plan = ExamplePlans.Full;
        var work = WorkTasks.Of(new PlanIndex(plan, ExamplePlans.Designs));
        var use = new PieceUse(plan);

        // All shares of a task come to one, and the tasks of a part are among those of its gift.
        foreach (var task in work.Tasks.Where(t => !t.Gifts.IsEmpty)) Assert.Equal(1m, decimal.Round(task.Gifts.Sum(g => use.Share(task, g)), 9));
        var rods = work.Tasks.First(t => t.Operation == Operation.CutRods);
        Assert.True(use.IsOnlyFor(rods, rods.Gifts[0], "rod"));
        Assert.Equal(1m, use.Share(rods, rods.Gifts[0], "rod"));
        Assert.Equal(0m, use.Share(rods, rods.Gifts[0], "rail"));
        var glue = work.Tasks.First(t => t.Operation == Operation.GlueUp);
        Assert.Equal(1m, glue.Gifts.Sum(g => use.Share(glue, g, "square")));
    }

    [Fact]
    public void Done_work_is_neither_saved_nor_paid_for()
    {
        var all = Answer();
        var glued = WorthAnswer.Of(new() { Plan = ExamplePlans.Squares, HourWorth = Twelve, Jigs = [Cauls], Done = ["glue-up/G1"] });

        Assert.DoesNotContain(glued.Jigs, j => j.Jig.Key == "clamping-cauls");
        // With it all that came before is done.
        Assert.True(glued.Things[0].Minutes < all.Things[0].Minutes - 14);
    }

    [Fact]
    public void Words_give_the_figures_first()
    {
        var words = new WorthWords(Twelve);
        var jig = Find(Answer(Cauls, Twelve, [new(PriceKind.Jig, "clamping cauls", 4.5m, 2)]));

        Assert.Equal("saves 6 min (€1.20) at 4 pieces and 1 set-up; 30 min to make (€6.00), €4.50 to buy, here in 2 days", words.Figures(jig));
        Assert.Equal(("do without", "made, it pays from 28 pieces, or after 5 plans such as this"), (WorthWords.Verdict(jig), WorthWords.Pays(jig)));
        Assert.Equal("3 h 20 min", WorthWords.Time(200));
        Assert.Equal("12.50 NZD", HourWorth.Text(12.5m, "NZD"));
    }

    [Fact]
    public void An_hours_worth_changes_no_plan()
    {
        var request = ExamplePlans.Squares.Request;

        Assert.Equal(PlanJson.Fingerprint(request), PlanJson.Fingerprint(request with { Shop = request.Shop with { HourWorth = Twelve } }));
        Assert.Equal(Twelve, PlanJson.Read(PlanJson.Write(ExamplePlans.Squares with { Request = request with { Shop = request.Shop with { HourWorth = Twelve } } })).Request.Shop.HourWorth);
    }

    private static WorthAnswer Answer() => Answer(Cauls);

    private static WorthAnswer Answer(Jig jig) => Answer(jig, Twelve);

    private static WorthAnswer Answer(Jig jig, HourWorth? hour, params Price[] prices) => WorthAnswer.Of(new() { Plan = ExamplePlans.Squares, HourWorth = hour, Jigs = [jig], Prices = [.. prices] });

    private static JigWorth Find(WorthAnswer answer) => answer.Jigs.Single(j => j.Jig.Key == "clamping-cauls");
}
