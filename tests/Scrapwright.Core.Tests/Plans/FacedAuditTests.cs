using System.Collections.Immutable;
using System.Text.Json.Nodes;
using CsCheck;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Chances;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Plans;

/// <summary>The audit of boards glued face to face, on a plan put together by hand.</summary>
public sealed class FacedAuditTests
{
    private static readonly string PlanText = PlanJson.Write(ExamplePlans.Faced);

    private static Plan Plan => ExamplePlans.Faced;

    [Fact]
    public void A_plan_with_a_board_holds_before_and_after_it_is_written()
    {
        Assert.Equal("", Text(Plan));
        Assert.Equal("", Text(PlanJson.Read(PlanText)));
    }

    [Fact]
    public void Every_volume_of_the_two_offcuts_is_as_worked_out_by_hand()
    {
        // T1 is 10 1/2 × 1 3/8 × 15/32 in, T2 10 × 1 1/2 × 16/32 in; each loses 1/32 at the jointer, and what they do not share sticks out.
        LedgerRow upper = Row("T1"), lower = Row("T2"), board = Row("T1+T2");

        Assert.Equal(Box(10.5, 1.375, 15), upper.In);
        Assert.Equal(Box(10, 1.375, 14), upper.Faced);
        Assert.Equal([new(Operation.FaceGlue, Box(0.5, 1.375, 14)), new(Operation.FaceJoint, Box(10.5, 1.375, 1))], upper.Waste);
        Assert.Equal(Box(10, 1.375, 15), lower.Faced);
        Assert.Equal([new(Operation.FaceGlue, Box(10, 0.125, 15)), new(Operation.FaceJoint, Box(10, 1.5, 1))], lower.Waste);
        Assert.Equal(Box(10, 1.375, 29), board.In);
        Assert.All(Plan.Ledger, r => Assert.Equal(r.In, r.Faced + r.Parts + r.Kept + r.Scrap + Volume.Sum(r.Waste.Select(w => w.Volume))));
        Assert.Equal(Plan.Ledger, WoodLedger.Of(Plan), (one, other) => one!.Faced == other!.Faced && one.In == other.In && one.Waste.SequenceEqual(other.Waste));
    }

    [Fact]
    public void A_board_of_another_wood_is_found() =>
        Finds("wood of the lower offcut", Refitted(Plan with { Request = Plan.Request with { Pile = [.. Plan.Request.Pile.Select(o => o.Label == "T2" ? o with { Species = "black-cherry" } : o)] } }));

    [Fact]
    public void An_offcut_in_two_boards_is_found() =>
        Finds("each offcut in one board, once", Plan with { Faced = Plan.Faced.Add(Plan.Faced[0] with { Label = "T1+W2", Lower = "W2" }) });

    [Fact]
    public void An_offcut_glued_to_itself_is_found() =>
        Finds("each offcut in one board, once", Plan with { Faced = [Plan.Faced[0] with { Label = "T1+T1", Lower = "T1" }] });

    [Fact]
    public void A_board_that_nothing_is_cut_from_is_found() =>
        Finds("a board that something is cut from", Plan with { Faced = Plan.Faced.Add(Plan.Faced[0] with { Label = "M1+W2", Upper = "M1", Lower = "W2" }) });

    [Fact]
    public void An_offcut_used_beside_its_board_is_found()
    {
        var step = Plan.Steps.First(s => s.Operation == Operation.FacePlane);
        Finds("T1 is used up", WithStep(step, step with { Works = [.. step.Works, step.Works[0] with { In = ["T1"], Out = [step.Works[0].Out[0] with { Id = "T1" }] }] }));
    }

    [Theory]
    [InlineData(Operation.FaceJoint)]
    [InlineData(Operation.FaceGlue)]
    public void A_step_left_out_is_found(Operation operation)
    {
        var first = Plan.Steps.First(s => s.Operation == operation);
        Finds(operation == Operation.FaceJoint ? "a flat inner face" : "one step", Plan with { Steps = [.. Plan.Steps.Remove(first).Select((s, i) => s with { Number = i + 1 })] });
    }

    [Fact]
    public void Gluing_after_other_work_is_found()
    {
        var glue = Plan.Steps.First(s => s.Operation == Operation.FaceGlue);
        Finds("working order", Plan with { Steps = [.. Plan.Steps.Remove(glue).Insert(2, glue).Select((s, i) => s with { Number = i + 1 })] });
    }

    [Fact]
    public void Too_few_clamps_are_found()
    {
        var request = Plan.Request with { Shop = Plan.Request.Shop with { Clamps = [new ClampKind("bar clamp", Length.FromInches(24), 2)] } };
        Finds("on the rack that reach", Refitted(Plan with { Request = request }));
    }

    [Fact]
    public void A_kept_offcut_in_a_board_is_found() =>
        Finds("kept for later", Refitted(Plan with { Request = Plan.Request with { Choices = new() { Saved = ["T2"] } } }));

    [Fact]
    public void A_defect_of_either_offcut_is_one_of_the_board() =>
        Finds("sound wood", Refitted(Plan with
        {
            Request = Plan.Request with
            {
                Pile = [.. Plan.Request.Pile.Select(o => o.Label == "T2" ? o with { Defects = [new(Core.Pile.DefectKind.Knot, Length.FromInches(4), Length.FromInches(5))] } : o)],
            },
        }));

    [Fact]
    public void Every_number_of_boards_and_their_steps_changed_by_one_is_found()
    {
        var root = JsonNode.Parse(PlanText)!;
        var missed = new List<string>();
        var numbers = PlanMutation.Numbers(root).Where(n => n.GetPath() is var p && (p.StartsWith("$.faced", StringComparison.Ordinal) || p.StartsWith("$.ledger", StringComparison.Ordinal)
            || p.StartsWith("$.steps[0]", StringComparison.Ordinal) || p.StartsWith("$.steps[1]", StringComparison.Ordinal))).ToArray();
        foreach (var number in numbers)
        {
            var changed = PlanMutation.Changed(number, 1);
            var path = number.GetPath();
            number.ReplaceWith(changed);
            if (PlanMutation.Findings(root, plan => PlanAudit.Check(plan).Length) == 0) missed.Add(path);
            changed.ReplaceWith(number);
        }

        Assert.True(numbers.Length > 60);
        Assert.Equal([], missed);
    }

    [Fact]
    public void Any_number_changed_by_any_amount_is_found_and_never_makes_the_audit_throw()
    {
        var count = PlanMutation.Numbers(JsonNode.Parse(PlanText)).Count();
        Gen.Select(Gen.Int[0, count - 1], Gen.OneOf(Gen.Long, Gen.Long[-1000, 1000])).Sample(
            (which, by) =>
            {
                var root = JsonNode.Parse(PlanText)!;
                var number = PlanMutation.Numbers(root).ElementAt(which);
                var isBound = PlanMutation.IsBound(number);
                number.ReplaceWith(PlanMutation.Changed(number, by == 0 ? 1 : by));
                return PlanMutation.Findings(root, plan => PlanAudit.Check(plan).Length) > 0 || isBound;
            },
            iter: 150, threads: 1);
    }

    [Fact]
    public void A_plan_written_before_there_were_boards_is_read()
    {
        var root = JsonNode.Parse(PlanJson.Write(ExamplePlans.Squares))!;
        root.AsObject().Remove("faced");
        foreach (var row in root["ledger"]!.AsArray()) row!.AsObject().Remove("faced");

        Assert.Empty(PlanAudit.Check(PlanJson.Read(root.ToJsonString())));
    }

    [Fact]
    public void The_thickness_of_the_board_is_as_uncertain_as_both_jointings_together()
    {
        var chances = PlanChances.Of(Plan);

        // Against the same strip from one thick offcut: two more works spread.
        Assert.InRange(chances.Panels[0].Sizes.Thickness, 0.95, 1);
        Assert.True(chances.Panels[0].Sizes.Thickness <= PlanChances.Of(ExamplePlans.Squares).Panels[0].Sizes.Thickness);
    }

    private static Volume Box(double lengthInches, double widthInches, int thirtySeconds) =>
        Volume.Of(Length.FromInches((long)(lengthInches * 8), 8), Length.FromInches((long)(widthInches * 8), 8), Length.FromInches(thirtySeconds, 32));

    private static LedgerRow Row(string label) => Plan.Ledger.Single(r => r.Offcut == label);

    private static Plan WithStep(Step old, Step now) => Plan with { Steps = Plan.Steps.Replace(old, now) };

    private static Plan Refitted(Plan plan) => plan with { Fingerprint = PlanJson.Fingerprint(plan.Request) };

    private static string Text(Plan plan) => string.Join("\n", PlanAudit.Check(plan).Select(f => $"{f.Where}: found {f.Found}, expected {f.Expected}"));

    private static void Finds(string words, Plan plan) => Assert.Contains(words, Text(plan));
}
