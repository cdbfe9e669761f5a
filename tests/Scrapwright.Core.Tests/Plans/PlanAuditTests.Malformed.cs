using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Tests.Plans;

public sealed partial class PlanAuditTests
{
    /// <summary>Plans that no reader gives but a program may: each must be found out, none may throw.</summary>
    public static TheoryData<string, Plan> Malformed => new()
    {
        { "no request", Full with { Request = null! } },
        { "no shop", Full with { Request = Full.Request with { Shop = null! } } },
        { "no allowance", Full with { Request = Full.Request with { Shop = Full.Request.Shop with { Allowances = Full.Request.Shop.Allowances with { Sand = null! } } } } },
        { "no fingerprint", Full with { Fingerprint = null! } },
        { "default steps", Full with { Steps = default } },
        { "default works", Full with { Steps = [Full.Steps[0] with { Works = default }] } },
        { "default in", Full with { Steps = [Full.Steps[0] with { Works = [Full.Steps[0].Works[0] with { In = default }] }] } },
        { "a missing piece", Full with { Steps = [Full.Steps[0] with { Works = [Full.Steps[0].Works[0] with { Out = [null!] }] }] } },
        { "nothing in", Full with { Steps = [Full.Steps[0] with { Works = [Full.Steps[0].Works[0] with { In = [] }] }] } },
        { "nothing out", Full with { Steps = [Full.Steps[0] with { Works = [Full.Steps[0].Works[0] with { Out = [] }] }] } },
        { "no steps", Full with { Steps = [] } },
        { "default leftovers", Full with { Leftovers = default } },
        { "default lanes", Full with { Leftovers = [new Leftover(new Piece("x", Length.Zero, Length.Zero, Length.Zero, default), LeftoverPlace.Pile)] } },
        { "no strips", Full with { GlueUps = [Full.GlueUps[0] with { Strips = [] }] } },
        { "no ladder", Full with { GlueUps = [Full.GlueUps[0] with { WidthLadder = null! }] } },
        { "twice the glue-up", Full with { GlueUps = [Full.GlueUps[0], Full.GlueUps[0]] } },
        { "no levels", Full with { Levels = [] } },
        { "zero blanks", Full with { GlueUps = [Full.GlueUps[0] with { Blanks = 0 }] } },
        { "two thousand million layers", Full with { GlueUps = [Full.GlueUps[0] with { Layers = int.MaxValue }] } },
        { "an offcut of no length", Piled(o => o with { Length = Length.Zero }) },
        { "an offcut longer than a street", Piled(o => o with { Length = Length.FromPicometres(long.MaxValue) }) },
        { "a thousand million offcuts", Piled(o => o with { Count = int.MaxValue }) },
        { "minus one offcuts", Piled(o => o with { Count = -1 }) },
        { "an unknown wood", Piled(o => o with { Species = "moonwood" }) },
        { "an offcut twice", Full with { Request = Full.Request with { Pile = [.. Full.Request.Pile, Full.Request.Pile[0]] } } },
        { "a contrast that is no number", Full with { Request = Full.Request with { Shop = Full.Request.Shop with { MinimumContrast = double.NaN } } } },
        { "a chance above certainty", Full with { Request = Full.Request with { Shop = Full.Request.Shop with { ConfidencePercent = 120 } } } },
    };

    [Theory]
    [MemberData(nameof(Malformed))]
    public void A_malformed_plan_is_found_out_and_nothing_is_thrown(string what, Plan plan)
    {
        Assert.NotEmpty(what);
        Assert.NotEmpty(Check(plan));
        Assert.NotEmpty(PlanAudit.Check(plan));
    }

    [Fact]
    public void A_piece_larger_than_a_room_is_found_out_at_every_place()
    {
        for (var i = 0; i < Full.Steps.Length; i++)
        {
            var step = Full.Steps[i];
            var work = step.Works[0];
            var large = work.Out[0] with { Length = Length.FromMillimetres(100_000), Width = Length.FromMillimetres(2_000), Thickness = Length.FromMillimetres(500) };
            var plan = Full with { Steps = Full.Steps.SetItem(i, step with { Works = step.Works.SetItem(0, work with { Out = work.Out.SetItem(0, large) }) }) };

            Assert.NotEmpty(Check(plan));
        }
    }

    private static Plan Piled(Func<Offcut, Offcut> change)
    {
        var request = Full.Request with { Pile = Full.Request.Pile.SetItem(0, change(Full.Request.Pile[0])) };
        return Full with { Request = request };
    }
}
