using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Chances;
using Scrapwright.Core.Shops;
using Scrapwright.Files;

namespace Scrapwright.Planning.Tests.Chances;

/// <summary>The chances of plans against 100,000 batches milled with random allowances; seeded, so that a test gives the same answer every time.</summary>
public sealed class SimulatedChanceTests
{
    private const int Batches = 100_000;

    // 100,000 batches of a chance of a half lie within 0.63 of a point 9,999 times in 10,000; the rest is for the sums.
    private const double OnePoint = 0.01;

    public static TheoryData<string, int, int> Cases { get; } = new()
    {
        { "squares", 80, 100 }, { "squares", 95, 100 }, { "squares", 99, 100 }, { "squares", 95, 300 },
        { "two gifts", 50, 100 }, { "two gifts", 80, 100 }, { "two gifts", 95, 250 }, { "two gifts", 99, 400 },
        { "long boards", 80, 100 }, { "long boards", 95, 200 }, { "long boards", 99, 300 },
        { "thick wood", 80, 100 }, { "thick wood", 95, 200 }, { "thick wood", 99, 300 },
        { "thin wood", 80, 100 }, { "thin wood", 95, 200 }, { "thin wood", 99, 300 },
        { "each its own", 80, 200 }, { "each its own", 95, 300 },
    };

    /// <param name="workshop">Whose wood.</param>
    /// <param name="asked">Chance asked for [%].</param>
    /// <param name="spread">Spreads when the plan is carried out, in hundredths of those it was made for: wider ones bring chances away from one.</param>
    [Theory]
    [MemberData(nameof(Cases))]
    public async Task Chances_agree_with_simulated_batches_within_one_point(string workshop, int asked, int spread)
    {
        var request = Request(workshop);
        var plan = await Requests.PlanOf(request with { Shop = request.Shop with { ConfidencePercent = asked } });

        Agree(Spread(plan, spread));
    }

    [Theory]
    [InlineData(80, 100)]
    [InlineData(95, 200)]
    public async Task Chances_of_the_example_workshop_agree_with_simulated_batches_within_one_point(int asked, int spread)
    {
        var request = ExampleWorkshop.Request with { Shop = ExampleWorkshop.Request.Shop with { ConfidencePercent = asked } };
        var plan = Assert.IsType<PlanOutcome.Planned>(await Planner.PlanAsync(request, new PlanLimits { Seconds = 3 })).Plan;

        Agree(Spread(plan, spread));
    }

    [Theory]
    [InlineData("squares", 80)]
    [InlineData("squares", 99)]
    [InlineData("long boards", 80)]
    [InlineData("long boards", 95)]
    [InlineData("thick wood", 95)]
    [InlineData("two gifts", 80)]
    [InlineData("thin wood", 80)]
    [InlineData("thin wood", 99)]
    [InlineData("two gifts", 99)]
    public async Task Simulated_batches_meet_the_chance_asked_for(string workshop, int asked)
    {
        var request = Request(workshop);
        var plan = await Requests.PlanOf(request with { Shop = request.Shop with { ConfidencePercent = asked } });

        var (_, gifts) = new SimulatedShop(plan, 7).Run(Batches);

        Assert.NotEmpty(gifts);
        Assert.All(gifts.Values, share => Assert.True(share >= (asked / 100.0) - (OnePoint / 2), $"{share}"));
    }

    private static void Agree(Plan plan)
    {
        var chances = PlanChances.Of(plan);

        var (panels, gifts) = new SimulatedShop(plan, 20260624).Run(Batches);

        Assert.NotEmpty(gifts);
        Assert.All(chances.Panels, p => Assert.True(Math.Abs(p.Sizes.Whole - panels[p.GlueUp]) < OnePoint, $"{p.GlueUp}: {p.Sizes} {p.Sizes.Whole}, simulated {panels[p.GlueUp]}"));
        Assert.All(chances.Gifts, g => Assert.True(Math.Abs(g.Share - gifts[g.Gift]) < OnePoint, $"{g.Gift}: {g.Share}, simulated {gifts[g.Gift]}"));
    }

    private static Plan Spread(Plan plan, int hundredths)
    {
        var takes = plan.Request.Shop.Allowances;
        return plan with
        {
            Request = plan.Request with
            {
                Shop = plan.Request.Shop with
                {
                    Allowances = takes with
                    {
                        FaceJoint = Wider(takes.FaceJoint),
                        FacePlane = Wider(takes.FacePlane),
                        EdgeJoint = Wider(takes.EdgeJoint),
                        PanelFlatten = Wider(takes.PanelFlatten),
                        ResawCleanUp = Wider(takes.ResawCleanUp),
                        Sand = Wider(takes.Sand),
                        EndTrim = Wider(takes.EndTrim),
                        WidthTrim = Wider(takes.WidthTrim),
                    },
                },
            },
        };

        Allowance Wider(Allowance allowance) => allowance with { Spread = (allowance.Spread * hundredths).Divide(100, Core.Measures.Rounding.Down) };
    }

    private static PlanRequest Request(string workshop) => workshop switch
    {
        "squares" => Requests.FourSquares,
        "two gifts" => Requests.TwoGifts,

        // Two long boards, so that strips of a panel and of both gifts come from one jointing.
        "long boards" => Requests.FourSquares with
        {
            Pile = [Requests.Offcut("W", "black-walnut", 60 * 16, 84, 12), Requests.Offcut("M", "sugar-maple", 60 * 16, 84, 12)],
            Gifts = [Requests.Squares("one"), Requests.Squares("two", ("count", "2"))],
        },

        // So thick that strips are resawn.
        "thick wood" => Requests.FourSquares with
        {
            Pile = [Requests.Offcut("W", "black-walnut", 19 * 16, 52, 28), Requests.Offcut("M", "sugar-maple", 19 * 16, 52, 28)],
            Gifts = [Requests.Squares("one", ("count", "4"))],
        },

        // Every square from a panel of its own, all from the same two boards.
        "each its own" => Requests.FourSquares with
        {
            Pile = [Requests.Offcut("W", "black-walnut", 70 * 16, 60, 12), Requests.Offcut("M", "sugar-maple", 70 * 16, 60, 12)],
            Gifts = [Requests.Squares("one", ("count", "4"), ("from-panels", "each"))],
        },

        // Walnut so thin that it has to be glued face to face first, and one strip from a board of which only just enough is left.
        "thin wood" => FacedBoardsTests.ThinWalnut with { Pile = [.. FacedBoardsTests.ThinWalnut.Pile.Select(o => o.Label.StartsWith('T') ? o with { Thickness = Core.Measures.Length.FromInches(13, 32) } : o)] },
        _ => throw new ArgumentOutOfRangeException(nameof(workshop), workshop, "A workshop of these tests."),
    };
}
