using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Tests.Chances;

/// <summary>
/// Mills a plan's wood batch after batch, step by step as the sheets say: every allowance is drawn anew, fences and stops stand where the plan says, and strips are planed
/// alike to the thinnest there is. Knows nothing of how chances are worked out.
/// </summary>
internal sealed class SimulatedShop
{
    private readonly Plan plan;
    private readonly Shop shop;
    private readonly Random random;
    private readonly Dictionary<string, Product> products;
    private readonly Dictionary<string, Body> bodies = [];
    private double spare = double.NaN;

    internal SimulatedShop(Plan plan, int seed)
    {
        this.plan = plan;
        shop = plan.Request.Shop;
        random = new Random(seed);
        products = plan.Request.DeriveDesigns().Where(d => d.Outcome is DesignOutcome.Derived).ToDictionary(d => d.Gift.Label, d => ((DesignOutcome.Derived)d.Outcome).Product);
    }

    /// <summary>Shares of the batches in which each glue-up, and each gift, met size.</summary>
    internal (Dictionary<string, double> Panels, Dictionary<string, double> Gifts) Run(int batches)
    {
        var panels = plan.GlueUps.ToDictionary(g => g.Id, _ => 0);
        var gifts = plan.Made.ToDictionary(m => m.Gift, _ => 0);
        for (var batch = 0; batch < batches; batch++)
        {
            var failed = Mill();
            foreach (var glueUp in plan.GlueUps.Where(g => !failed.Contains(g.Id)))
            {
                panels[glueUp.Id]++;
            }

            foreach (var made in plan.Made)
            {
                if (!plan.GlueUps.Any(g => g.IsFor(made.Gift) && failed.Contains(g.Id)) && !plan.Boards.Any(b => b.Gift == made.Gift && failed.Contains("board " + b.Piece)))
                {
                    gifts[made.Gift]++;
                }
            }
        }

        return (panels.ToDictionary(p => p.Key, p => p.Value / (double)batches), gifts.ToDictionary(g => g.Key, g => g.Value / (double)batches));
    }

    private HashSet<string> Mill()
    {
        bodies.Clear();
        foreach (var offcut in plan.Request.Pile.SelectMany(o => o.Pieces()))
        {
            bodies[offcut.Label] = new Body(offcut.Width.Millimetres, offcut.Thickness.Millimetres);
        }

        foreach (var step in plan.Steps)
        {
            foreach (var work in step.Works.Where(_ => step.Operation == Operation.FaceGlue))
            {
                bodies[work.Out[0].Id] = new Body(work.Out[0].Width.Millimetres, work.In.Sum(half => bodies[half].Thickness));
            }

            foreach (var work in step.Works.Where(w => w.In.Length == 1 && bodies.ContainsKey(w.In[0])))
            {
                Do(step.Operation, work);
            }
        }

        var failed = new HashSet<string>();
        foreach (var glueUp in plan.GlueUps.Where(g => !Holds(g)))
        {
            failed.Add(glueUp.Id);
        }

        foreach (var board in plan.Boards.Where(b => !Holds(b)))
        {
            failed.Add("board " + board.Piece);
        }

        return failed;
    }

    private void Do(Operation operation, Work work)
    {
        var body = bodies[work.In[0]];
        var takes = shop.Allowances;
        switch (operation)
        {
            case Operation.FaceJoint:
                bodies[work.In[0]] = body with { Thickness = body.Thickness - work.Taken.Millimetres - Off(takes.FaceJoint) };
                break;
            case Operation.FacePlane:
                bodies[work.In[0]] = body with { Thickness = body.Thickness - work.Taken.Millimetres - Off(takes.FacePlane) };
                break;
            case Operation.CleanSawnFaces:
                bodies[work.In[0]] = body with { Thickness = body.Thickness - work.Taken.Millimetres - Off(takes.ResawCleanUp) };
                break;
            case Operation.EdgeJoint:
                var width = body.Width - work.Taken.Millimetres - Off(takes.EdgeJoint);
                bodies[work.In[0]] = body with { Width = work.Taken > takes.EdgeJoint.Mean ? width - Off(takes.EdgeJoint) : width };
                break;
            case Operation.RoughRip or Operation.Rip:
                var ripped = work.Out.SkipLast(1).Sum(p => p.Width.Millimetres + work.Kerf.Millimetres) + work.Taken.Millimetres;
                Split(work, p => body with { Width = p.Width.Millimetres }, body with { Width = body.Width - ripped });
                break;
            case Operation.ResawStrips:
                var sawn = work.Out.SkipLast(1).Sum(p => p.Thickness.Millimetres + work.Kerf.Millimetres);
                Split(work, p => body with { Thickness = p.Thickness.Millimetres }, body with { Thickness = body.Thickness - sawn });
                break;
            case Operation.RoughCrosscut or Operation.CrosscutStrips:
                Split(work, _ => body, body);
                break;
        }
    }

    private void Split(Work work, Func<Piece, Body> set, Body last)
    {
        foreach (var piece in work.Out.SkipLast(1))
        {
            bodies[piece.Id] = set(piece);
        }

        bodies[work.Out[^1].Id] = last;
    }

    private bool Holds(GlueUp glueUp)
    {
        var part = products[glueUp.Gift].Parts.First(p => p.Key == glueUp.Part);
        var takes = shop.Allowances;
        var width = glueUp.Strips.Sum(s => bodies[s.Piece].Width);
        var flat = glueUp.Strips.Min(s => bodies[s.Piece].Thickness) - takes.PanelFlatten.Mean.Millimetres - Off(takes.PanelFlatten);
        var fence = ((glueUp.Strips.Min(s => s.Thickness) - takes.PanelFlatten.Mean - (shop.Bandsaw.Kerf * (glueUp.Layers - 1))).Millimetres) / glueUp.Layers;
        var planed = (part.Thickness + (takes.Sand.Mean * 2)).Millimetres;
        var holds = true;
        for (var layer = 1; layer <= glueUp.Layers; layer++)
        {
            var thickness = layer < glueUp.Layers ? fence : flat - ((glueUp.Layers - 1) * (fence + shop.Bandsaw.Kerf.Millimetres));
            if (glueUp.Layers > 1)
            {
                thickness -= takes.ResawCleanUp.Mean.Millimetres + Off(takes.ResawCleanUp);
            }

            holds &= thickness >= planed;
            holds &= width - takes.WidthTrim.Mean.Millimetres - Off(takes.WidthTrim) >= part.Width.Millimetres;
            holds &= EndsHold(glueUp.Overlap, Enumerable.Repeat(part.Length, glueUp.Blanks));
        }

        return holds;
    }

    private bool Holds(BoardRun board)
    {
        var product = products[board.Gift];
        Part[] members = [.. product.Runs.First(r => r.Mark == board.Run).Members.Select(m => product.Parts.First(p => p.Key == m.Part))];
        var holds = bodies[board.Piece].Width >= members[0].Width.Millimetres;
        holds &= bodies[board.Piece].Thickness >= (members[0].Thickness + (shop.Allowances.Sand.Mean * 2)).Millimetres;
        return EndsHold(board.Length, members.Select(m => m.Length)) && holds;
    }

    private bool EndsHold(Length length, IEnumerable<Length> parts)
    {
        Length[] all = [.. parts];
        var end = shop.Allowances.EndTrim;
        var room = (length - Length.Sum(all) - (shop.TableSaw.Kerf * (all.Length - 1)) - (end.Mean * 2)).Millimetres;
        return Off(end) + Off(end) <= room;
    }

    /// <summary>What one work takes beyond its mean: normal, by the polar method.</summary>
    private double Off(Allowance allowance)
    {
        if (!double.IsNaN(spare))
        {
            var kept = spare;
            spare = double.NaN;
            return kept * allowance.Spread.Millimetres;
        }

        double u, v, s;
        do
        {
            u = (2 * random.NextDouble()) - 1;
            v = (2 * random.NextDouble()) - 1;
            s = (u * u) + (v * v);
        }
        while (s is >= 1 or 0);

        var factor = Math.Sqrt(-2 * Math.Log(s) / s);
        spare = v * factor;
        return u * factor * allowance.Spread.Millimetres;
    }

    private readonly record struct Body(double Width, double Thickness);
}
