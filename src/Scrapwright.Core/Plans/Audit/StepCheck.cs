using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>What stands over the works of each step: number, station, minutes, order, gift and assembly step.</summary>
internal sealed class StepCheck(Facts facts, Findings findings)
{
    private const int LastRank = 18;

    /// <summary>Looks at all steps.</summary>
    public void Check()
    {
        var rank = 0;
        for (var i = 0; i < facts.Plan.Steps.Length; i++)
        {
            var step = facts.Plan.Steps[i];
            var where = $"step {step.Number} {step.Operation}";
            findings.Equal(where + " number", step.Number, i + 1);
            CheckMinutes(step, where);
            CheckNames(step, where);
            var here = Rank(step, rank);
            findings.Require(here >= rank, where, "after a later kind of work", "working order");
            rank = Math.Max(rank, here);
        }

        CheckAssembly();
    }

    private int Rank(Step step, int before) => step.AssemblyIndex >= 0 ? LastRank : step.Operation switch
    {
        // What is glued face to face is jointed before anything else: then boards are wood like any other.
        Operation.FaceGlue => 0,
        Operation.FaceJoint when before == 0 && step.Works.All(w => w.In is [var only] && facts.Plan.Faced.Any(f => f.IsOf(only))) => 0,
        Operation.EdgeJoint => before <= 5 ? 5 : 7,
        <= Operation.Rip => (int)step.Operation,
        < Operation.CutRods => (int)step.Operation + 1,
        _ => LastRank,
    };

    private void CheckMinutes(Step step, string where)
    {
        var time = facts.Shop.Times.FirstOrDefault(t => t.Operation == step.Operation)
            ?? (step.Operation == Operation.FaceGlue ? facts.Shop.Times.FirstOrDefault(t => t.Operation == Operation.GlueUp) : null);
        var hands = time is null ? 5 + (2L * step.Works.Length) : time.SetUpMinutes + ((long)time.EachMinutes * step.Works.Length);
        findings.Equal(where + " hands-on minutes", step.HandsOnMinutes, hands);
        findings.Equal(where + " waiting minutes", step.WaitMinutes, time?.WaitMinutes ?? 0);
    }

    private void CheckNames(Step step, string where)
    {
        if (step.AssemblyIndex >= 0)
        {
            return;
        }

        findings.Equal(where + " assembly index", step.AssemblyIndex, -1);
        var station = step.Operation switch
        {
            Operation.FaceJoint or Operation.EdgeJoint => Station.Jointer,
            Operation.FacePlane or Operation.CleanSawnFaces or Operation.PlaneToThickness or Operation.FlattenPanel or Operation.PlanePanel => Station.Planer,
            Operation.RoughRip or Operation.Resaw or Operation.ResawStrips => Station.Bandsaw,
            Operation.GlueUp or Operation.FaceGlue => Station.Clamps,
            _ => Station.TableSaw,
        };
        var byHand = !step.Works.IsEmpty && step.Works.All(w => w.Workaround == Workaround.HandTool);
        findings.Require(step.Station == station || (byHand && step.Station == Station.HandTools), where + " station", step.Station, station);
        findings.Require(!step.Works.IsEmpty, where, "no works", "one or more");
        if (step.GlueUp.Length > 0)
        {
            var fits = facts.GlueUpById.TryGetValue(step.GlueUp, out var glueUp)
                && (step.Gift.Length == 0 || step.Gift == glueUp.Gift)
                && step.Works.All(w => w.In.Concat(w.Out.Select(p => p.Id)).Any(id => Belongs(id, glueUp)));
            findings.Require(fits, where + " glue-up", step.GlueUp, "the glue-up that its pieces belong to");
        }
        else if (step.Gift.Length > 0)
        {
            findings.Require(facts.Products.ContainsKey(step.Gift), where + " gift", step.Gift, "a gift");
        }
    }

    private bool Belongs(string id, GlueUp glueUp) =>
        id == glueUp.Id
        || id.StartsWith(glueUp.Id + "/", StringComparison.Ordinal)
        || (facts.GlueUpByStrip.TryGetValue(id, out var strips) && strips == glueUp)
        || (facts.PartByPiece.TryGetValue(id, out var made) && glueUp.IsFor(made.Gift, made.Part.Part));

    private void CheckAssembly()
    {
        var steps = facts.Plan.Steps.Where(s => s.AssemblyIndex >= 0).ToArray();
        foreach (var made in facts.Plan.Made)
        {
            if (!facts.Products.TryGetValue(made.Gift, out var product))
            {
                continue;
            }

            var own = steps.Where(s => s.Gift == made.Gift).ToArray();
            findings.Same($"gift {made.Gift} assembly steps", own.Select(s => s.AssemblyIndex), Enumerable.Range(0, product.Assembly.Length));
            foreach (var step in own.Where(s => s.AssemblyIndex < product.Assembly.Length))
            {
                var asked = product.Assembly[step.AssemblyIndex];
                var where = $"step {step.Number} {step.Operation} of {made.Gift}";
                findings.Equal(where + " operation", step.Operation, asked.Operation);
                findings.Equal(where + " station", step.Station, asked.Station);
                findings.Equal(where + " glue-up", step.GlueUp, "");
                var pieces = step.Operation == Operation.CutRods
                    ? step.Works.SelectMany(w => w.Out.Select(p => p.Id))
                    : step.Works.SelectMany(w => w.In);
                var expected = made.Parts.Where(p => asked.Parts.Contains(p.Part)).Select(p => p.Piece);
                findings.Same(where + " pieces", pieces.Order(StringComparer.Ordinal), expected.Order(StringComparer.Ordinal));
            }
        }

        foreach (var step in steps)
        {
            findings.Require(facts.Plan.Made.Any(m => m.Gift == step.Gift), $"step {step.Number} gift", step.Gift, "a gift that is made");
        }
    }
}
