using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans;

/// <summary>Which passes over faces and edges the size of every piece hangs on, read from the steps before any glue is on.</summary>
internal sealed class PassBook
{
    private static readonly Trail Untouched = new([], [], [], false, false);
    private readonly Dictionary<string, Trail> trails = new(StringComparer.Ordinal);
    private readonly Allowances allowances;

    /// <summary>Reads the steps of a plan.</summary>
    public PassBook(Plan plan)
    {
        allowances = plan.Request.Shop.Allowances;
        foreach (var step in plan.Steps.Where(s => s.Operation <= Operation.EdgeJoint || s.Operation is Operation.Rip or Operation.ResawStrips or Operation.CleanSawnFaces or Operation.CrosscutStrips))
        {
            foreach (var work in step.Works.Where(w => w.In.Length == 1 && !w.Out.IsEmpty))
            {
                Note(step, work, trails.GetValueOrDefault(work.In[0], Untouched));
            }
        }
    }

    /// <summary>A strip with its passes; those of a strip that no step works are its own, as if it were milled alone.</summary>
    /// <param name="piece">Id of the strip.</param>
    /// <param name="offcut">The offcut it comes from; null when the pile has none of that name.</param>
    /// <param name="layers">Layers it was sawn into with its neighbours, when no step works it.</param>
    /// <param name="width">Its net width.</param>
    /// <param name="thickness">Its thickness.</param>
    /// <param name="shop">The shop.</param>
    public WorkedStrip Strip(string piece, Pile.Offcut? offcut, int layers, Length width, Length thickness, Shop shop)
    {
        if (trails.TryGetValue(piece, out var trail) && !trail.Edges.IsEmpty)
        {
            return new WorkedStrip(thickness, width, Together(trail.Faces), Together(trail.Edges)) { Before = trail.Before.IsEmpty ? null : Together(trail.Before) };
        }

        var faces = offcut is null ? Length.Zero : StripMilling.Thickness(offcut, offcut.Length, offcut.Width, Math.Max(1, layers), shop).Spread;
        return new WorkedStrip(thickness, width, new Pass(piece, faces), new Pass(piece, StripMilling.Width(default, shop).Spread));
    }

    private static Pass Together(ImmutableArray<Pass> passes) => new(
        string.Join('+', passes.Select(p => p.Key)),
        Length.FromPicometres((long)Math.Ceiling(Math.Sqrt(passes.Sum(p => (double)p.Spread.Picometres * p.Spread.Picometres)))));

    private void Note(Step step, Work work, Trail trail)
    {
        var key = $"{step.Number} {work.In[0]}";
        switch (step.Operation)
        {
            case Operation.FaceJoint:
                trails[work.Out[0].Id] = trail with { Faces = trail.Faces.Add(new Pass(key, allowances.FaceJoint.Spread)) };
                break;
            case Operation.FacePlane:
                trails[work.Out[0].Id] = trail with { Faces = trail.Faces.Add(new Pass(key, allowances.FacePlane.Spread)) };
                break;
            case Operation.EdgeJoint:
                JointEdges(key, work, trail);
                break;
            case Operation.Rip or Operation.RoughRip:
                Rip(work, trail);
                break;
            case Operation.ResawStrips:
                foreach (var layer in work.Out)
                {
                    trails[layer.Id] = trail with { Faces = [], Before = [.. trail.Before.Concat(trail.Faces).Select(p => p with { Spread = p.Spread.Divide(work.Out.Length, Rounding.Up) })] };
                }

                break;
            case Operation.CleanSawnFaces:
                trails[work.Out[0].Id] = trail with { Faces = trail.Faces.Add(new Pass(key, allowances.ResawCleanUp.Spread)) };
                break;
            default:
                foreach (var piece in work.Out) trails[piece.Id] = trail;
                break;
        }
    }

    private void JointEdges(string key, Work work, Trail trail)
    {
        var open = (trail.IsLowerDone ? 0 : 1) + (trail.IsUpperDone ? 0 : 1);
        var edges = work.Taken == allowances.EdgeJoint.Mean * open ? open : 1;
        trails[work.Out[0].Id] = trail with
        {
            Edges = trail.Edges.Add(new Pass(key, LadderBuilder.Together(allowances.EdgeJoint.Spread, edges))),
            IsUpperDone = trail.IsUpperDone || edges == 2 || trail.IsLowerDone,
            IsLowerDone = true,
        };
    }

    // The fence sets every lane's width but the last one's: that is what is left, so what the first edges took is its to bear.
    private void Rip(Work work, Trail trail)
    {
        for (var i = 0; i < work.Out.Length; i++)
        {
            var isLast = i == work.Out.Length - 1;
            trails[work.Out[i].Id] = trail with
            {
                Edges = isLast ? trail.Edges : [],
                IsLowerDone = i == 0 && trail.IsLowerDone,
                IsUpperDone = isLast && trail.IsUpperDone && work.Taken.IsZero,
            };
        }
    }

    private sealed record Trail(ImmutableArray<Pass> Before, ImmutableArray<Pass> Faces, ImmutableArray<Pass> Edges, bool IsLowerDone, bool IsUpperDone);
}
