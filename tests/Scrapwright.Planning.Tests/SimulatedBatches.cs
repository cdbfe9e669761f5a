using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Tests;

/// <summary>
/// Works a plan through many times, step by step, drawing what every work takes; counts how often panels and gifts meet their sizes.
/// Knows nothing of how chances are worked out: only what each work does to a piece. The same draws serve every panel and gift.
/// </summary>
internal sealed class SimulatedBatches
{
    private readonly Plan plan;
    private readonly Allowances allowances;
    private readonly Random random;
    private readonly Dictionary<string, (double Length, double Width, double Thickness)> pieces = [];
    private readonly Dictionary<string, string> panelOf = [];
    private readonly HashSet<string> missed = [];

    private readonly Dictionary<string, GlueUp> glueUps;
    private readonly Dictionary<string, BoardRun> boards;
    private readonly HashSet<string> parts;
    private readonly Core.Pile.Offcut[] pile;

    private SimulatedBatches(Plan plan, int seed)
    {
        (this.plan, allowances, random) = (plan, plan.Request.Shop.Allowances, new Random(seed));
        glueUps = plan.GlueUps.ToDictionary(g => g.Id);
        boards = plan.Boards.ToDictionary(b => b.Piece);
        parts = [.. plan.Made.SelectMany(m => m.Parts).Select(p => p.Piece)];
        var used = plan.Steps.SelectMany(s => s.Works).SelectMany(w => w.In).ToHashSet();
        pile = [.. plan.Request.Pile.SelectMany(o => o.Pieces()).Where(o => used.Contains(o.Label))];
    }

    /// <summary>How often each glue-up and each gift held, 0 to 1.</summary>
    internal static Dictionary<string, double> Run(Plan plan, int batches, int seed)
    {
        var one = new SimulatedBatches(plan, seed);
        string[] names = [.. plan.GlueUps.Select(g => g.Id), .. plan.Made.Select(m => m.Gift)];
        var held = names.ToDictionary(n => n, _ => 0);
        for (var batch = 0; batch < batches; batch++)
        {
            one.WorkOnce();
            foreach (var name in names)
            {
                held[name] += one.missed.Contains(name) ? 0 : 1;
            }
        }

        return held.ToDictionary(h => h.Key, h => h.Value / (double)batches);
    }

    private void WorkOnce()
    {
        pieces.Clear();
        panelOf.Clear();
        missed.Clear();
        foreach (var offcut in pile)
        {
            pieces[offcut.Label] = (offcut.Length.Millimetres, offcut.Width.Millimetres, offcut.Thickness.Millimetres);
        }

        foreach (var step in plan.Steps.Where(s => s.AssemblyIndex < 0))
        {
            foreach (var work in step.Works)
            {
                Do(step, work);
            }
        }
    }

    private void Do(Step step, Work work)
    {
        var id = work.In[0];
        var piece = pieces[id];
        switch (step.Operation)
        {
            case Operation.FaceJoint:
                pieces[id] = piece with { Thickness = piece.Thickness - work.Taken.Millimetres - Draw(allowances.FaceJoint) };
                break;
            case Operation.FacePlane:
                pieces[id] = piece with { Thickness = piece.Thickness - work.Taken.Millimetres - Draw(allowances.FacePlane) };
                break;
            case Operation.CleanSawnFaces:
                pieces[id] = piece with { Thickness = piece.Thickness - work.Taken.Millimetres - Draw(allowances.ResawCleanUp) };
                break;
            case Operation.EdgeJoint:
                var taken = work.Taken.Millimetres;
                for (var edge = 0; edge < (int)Math.Round(work.Taken.Millimetres / allowances.EdgeJoint.Mean.Millimetres); edge++)
                {
                    taken += Draw(allowances.EdgeJoint);
                }

                pieces[id] = piece with { Width = piece.Width - taken };
                break;
            case Operation.RoughRip or Operation.Rip:
                // The fence sets all lanes but the last, which is what is left.
                var rest = piece.Width - (work.Kerf * work.Cuts).Millimetres;
                for (var i = 0; i < work.Out.Length; i++)
                {
                    var width = i == work.Out.Length - 1 ? rest - work.Taken.Millimetres : work.Out[i].Width.Millimetres;
                    pieces[work.Out[i].Id] = piece with { Width = width };
                    rest -= width;
                }

                break;
            case Operation.RoughCrosscut or Operation.CrosscutStrips:
                foreach (var cut in work.Out)
                {
                    pieces[cut.Id] = piece with { Length = cut.Length.Millimetres };
                }

                break;
            case Operation.ResawStrips or Operation.Resaw:
                foreach (var layer in work.Out)
                {
                    pieces[layer.Id] = piece with { Thickness = (piece.Thickness - (work.Kerf * work.Cuts).Millimetres) / work.Out.Length };
                    if (panelOf.TryGetValue(id, out var from)) panelOf[layer.Id] = from;
                }

                break;
            case Operation.PlaneToThickness:
                // Strips are planed to the thinnest of their glue-up, whatever it measures; a board to its size.
                if (boards.ContainsKey(id)) Need(id, piece.Thickness, work.Out[0].Thickness);
                break;
            case Operation.GlueUp:
                var strips = work.In.Select(s => pieces[s]).ToArray();
                pieces[work.Out[0].Id] = (strips.Min(s => s.Length), strips.Sum(s => s.Width), strips.Min(s => s.Thickness));
                panelOf[work.Out[0].Id] = work.Out[0].Id;
                break;
            case Operation.FlattenPanel:
                pieces[id] = piece with { Thickness = piece.Thickness - work.Taken.Millimetres - Draw(allowances.PanelFlatten) };
                break;
            case Operation.PlanePanel:
                var cleaned = glueUps[panelOf[id]].Layers > 1 ? allowances.ResawCleanUp.Mean.Millimetres + Draw(allowances.ResawCleanUp) : 0;
                Need(id, piece.Thickness - cleaned, work.Out[0].Thickness);
                break;
            case Operation.TrimWidth:
                var trim = panelOf.ContainsKey(id) ? allowances.WidthTrim.Mean.Millimetres + Draw(allowances.WidthTrim) : 0;
                Need(id, piece.Width - trim, work.Out[0].Width);
                break;
            case Operation.CrosscutBlanks:
                // The rest is no blank: it is what is over.
                var wanted = panelOf.TryGetValue(id, out var panel) ? glueUps[panel].Blanks : work.Out.Count(p => parts.Contains(p.Id));
                var blanks = Length.Sum(work.Out.Take(wanted).Select(p => p.Length)) + (work.Kerf * (wanted - 1));
                Need(id, piece.Length - (allowances.EndTrim.Mean * 2).Millimetres - Draw(allowances.EndTrim) - Draw(allowances.EndTrim), blanks);
                break;
            default:
                throw new InvalidOperationException($"No simulation of {step.Operation}.");
        }
    }

    private void Need(string piece, double found, Length needed)
    {
        if (found >= needed.Millimetres - 1e-9)
        {
            return;
        }

        if (panelOf.TryGetValue(piece, out var panel))
        {
            missed.Add(panel);
            missed.Add(glueUps[panel].Gift);
        }
        else
        {
            missed.Add(boards[piece].Gift);
        }
    }

    // By the method of Box and Muller.
    private double Draw(Allowance allowance) => allowance.Spread.Millimetres
        * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
