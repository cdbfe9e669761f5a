using System.Collections.Immutable;
using System.Text.Json.Nodes;
using CsCheck;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Plans;

public sealed partial class PlanAuditTests
{
    private static Plan Full => ExamplePlans.Full;

    [Fact]
    public void Any_item_of_any_list_left_out_or_doubled_is_found()
    {
        var count = Items(JsonNode.Parse(FullText)!).Count();

        Gen.Select(Gen.Int[0, count - 1], Gen.Bool).Sample(
            (which, leaveOut) =>
            {
                var root = JsonNode.Parse(FullText)!;
                var (list, index) = Items(root).ElementAt(which);
                if (leaveOut)
                {
                    list.RemoveAt(index);
                }
                else
                {
                    list.Insert(index, list[index]!.DeepClone());
                }

                return PlanMutation.Findings(root, plan => Check(plan).Length) > 0;
            },
            iter: 100, threads: 1);
    }

    [Fact]
    public void Two_strips_changed_over_are_found()
    {
        var strips = Full.GlueUps[0].Strips;
        var swapped = Full with { GlueUps = [Full.GlueUps[0] with { Strips = [strips[1], strips[0], .. strips[2..]] }] };

        Assert.Contains(Check(swapped), f => f.Where.Contains("strips in order", StringComparison.Ordinal));
    }

    [Fact]
    public void Two_parts_of_a_grain_run_changed_over_are_found()
    {
        var made = Full.Made[0];
        var swapped = Full with
        {
            Made = [made with { Parts = [.. made.Parts.Select(p => p.Part == "rail" ? p with { Copy = 3 - p.Copy } : p)] }],
        };

        Assert.Contains(Check(swapped), f => f.Where.Contains("parts along board", StringComparison.Ordinal));
    }

    [Fact]
    public void A_step_left_out_is_found_even_when_the_rest_is_numbered_anew()
    {
        for (var i = 0; i < Full.Steps.Length; i++)
        {
            var steps = Full.Steps.RemoveAt(i).Select((s, n) => s with { Number = n + 1 }).ToImmutableArray();

            Assert.NotEmpty(Check(Full with { Steps = steps }));
        }
    }

    [Fact]
    public void Steps_in_another_order_are_found()
    {
        for (var i = 1; i < Full.Steps.Length; i++)
        {
            var steps = Full.Steps.SetItem(i, Full.Steps[i - 1]).SetItem(i - 1, Full.Steps[i])
                .Select((s, n) => s with { Number = n + 1 }).ToImmutableArray();

            // Planing strips is one kind of work in two steps here, and so is cutting blanks; those may change places.
            if (Full.Steps[i].Operation != Full.Steps[i - 1].Operation)
            {
                Assert.NotEmpty(Check(Full with { Steps = steps }));
            }
        }
    }

    [Fact]
    public void A_piece_used_after_it_was_cut_is_found()
    {
        var step = Full.Steps.First(s => s.Operation == Operation.FaceJoint);
        var work = step.Works[0] with { In = ["M1"] };
        var plan = Full with { Steps = Full.Steps.Replace(step, step with { Works = step.Works.SetItem(0, work) }) };

        Assert.Contains(Check(plan), f => f.Found.Contains("M1 is used up", StringComparison.Ordinal));
    }

    [Fact]
    public void A_machine_met_below_its_minimum_without_another_way_is_found()
    {
        var step = Full.Steps.First(s => s.Operation == Operation.FaceJoint);
        Assert.Contains(step.Works, w => w.Workaround == Workaround.HandTool);
        var careless = step with { Works = [.. step.Works.Select(w => w with { Workaround = Workaround.None })] };

        Assert.Contains(Check(Full with { Steps = Full.Steps.Replace(step, careless) }), f => f.Expected == "HandTool");
    }

    [Fact]
    public void A_changed_request_is_found()
    {
        var request = Full.Request with { Shop = Full.Request.Shop with { KeepLength = Length.FromInches(3) } };

        Assert.Contains(Check(Full with { Request = request }), f => f.Where.StartsWith("fingerprint", StringComparison.Ordinal));
    }

    /// <summary>Every item of every list outside the request.</summary>
    private static IEnumerable<(JsonArray List, int Index)> Items(JsonNode? node) => node switch
    {
        JsonObject o => o.Where(m => m.Key != "request").SelectMany(m => Items(m.Value)),
        JsonArray a => a.SelectMany((item, i) => Items(item).Prepend((a, i))),
        _ => [],
    };
}
