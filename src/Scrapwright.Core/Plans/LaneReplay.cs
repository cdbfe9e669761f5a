using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans;

/// <summary>Works the lanes of every piece of a panel out again when its strips lie in another order. Sizes of pieces do not change.</summary>
internal sealed class LaneReplay(Plan plan)
{
    private readonly Dictionary<string, Piece> changed = new(StringComparer.Ordinal);

    /// <summary>The steps with the new lanes.</summary>
    /// <param name="glueUp">Id of the glue-up.</param>
    /// <param name="strips">Ids of its strips in their new order.</param>
    /// <param name="pieces">The last state of every piece that changed.</param>
    public ImmutableArray<Step> WithOrder(string glueUp, ImmutableArray<string> strips, out IReadOnlyDictionary<string, Piece> pieces)
    {
        var last = new Dictionary<string, Piece>(StringComparer.Ordinal);
        var steps = ImmutableArray.CreateBuilder<Step>(plan.Steps.Length);
        foreach (var step in plan.Steps)
        {
            var works = step.Works.Select(work =>
            {
                var now = step.Operation == Operation.GlueUp && work.Out is [var panel] && panel.Id == glueUp
                    ? work with { In = strips, Out = [panel with { Lanes = [.. strips.SelectMany(s => last[s].Lanes)] }] }
                    : work.In.Any(changed.ContainsKey) ? After(step.Operation, work) : work;
                foreach (var piece in now.Out)
                {
                    last[piece.Id] = piece;
                    if (!ReferenceEquals(now, work)) changed[piece.Id] = piece;
                }

                return now;
            }).ToImmutableArray();
            steps.Add(step with { Works = works });
        }

        pieces = changed;
        return steps.MoveToImmutable();
    }

    private Work After(Operation operation, Work work)
    {
        if (work.In is [var only] && changed.TryGetValue(only, out var panel))
        {
            var lanes = operation == Operation.TrimWidth ? Narrowed(panel.Lanes, work.TakenFirst, work.Taken - work.TakenFirst) : panel.Lanes;
            return work with { Out = [.. work.Out.Select(p => p with { Lanes = lanes })] };
        }

        // Assembling: pieces come out as they went in.
        return work with { Out = [.. work.Out.Select(p => changed.TryGetValue(p.Id, out var before) ? p with { Lanes = before.Lanes } : p)] };
    }

    private static ImmutableArray<Lane> Narrowed(ImmutableArray<Lane> lanes, Length lower, Length upper)
    {
        return [.. Off(Off(lanes, lower).Reverse(), upper).Reverse()];

        static IEnumerable<Lane> Off(IEnumerable<Lane> lanes, Length off)
        {
            foreach (var lane in lanes)
            {
                var here = Length.Min(off, lane.Width);
                off -= here;
                if (here < lane.Width) yield return lane with { Width = lane.Width - here };
            }
        }
    }
}
