using System.Collections.Immutable;

namespace Scrapwright.Core.Finishing;

/// <summary>Finds the best way through the grits: fewest to buy, then fewest, then the smallest largest step.</summary>
internal sealed class GritWay
{
    private readonly Grit[] grits;
    private readonly bool[] bought;
    private readonly double largestStep;
    private readonly int start;
    private readonly int end;

    internal GritWay(Grit first, Grit last, double largestStep, ImmutableArray<Grit> onHand)
    {
        this.largestStep = largestStep;
        // A surface already finer than the last grit asks for is sanded with the last grit alone.
        if (first.ParticleMicrometres < last.ParticleMicrometres) first = last;
        var own = onHand.DistinctBy(g => g.ParticleMicrometres).ToArray();
        // A stand-in is within one step, so that nobody begins with P24 for want of P120.
        var from = own.Where(g => IsStep(first, g, coarser: true)).MinBy(g => g.ParticleMicrometres) ?? first;
        var to = own.Where(g => IsStep(last, g, coarser: false)).MaxBy(g => g.ParticleMicrometres) ?? last;
        // Bought grits are of the scale of the maker's own.
        var scale = own.Length > 0 ? own[0].Scale : last.Scale;
        grits =
        [
            .. own.Concat(GritTable.All.Where(g => g.Scale == scale)).Append(from).Append(to).DistinctBy(g => g.ParticleMicrometres)
                .Where(g => g.ParticleMicrometres <= from.ParticleMicrometres && g.ParticleMicrometres >= to.ParticleMicrometres)
                .OrderByDescending(g => g.ParticleMicrometres),
        ];
        bought = [.. grits.Select(g => !onHand.Contains(g))];
        (start, end) = (0, grits.Length - 1);
    }

    private bool IsStep(Grit asked, Grit standIn, bool coarser)
    {
        var ratio = coarser ? standIn.ParticleMicrometres / asked.ParticleMicrometres : asked.ParticleMicrometres / standIn.ParticleMicrometres;
        return ratio == 1 || (ratio > 1 && ratio <= largestStep);
    }

    /// <summary>From coarse to fine; empty when no way keeps to the largest step.</summary>
    internal ImmutableArray<Grit> Best()
    {
        var best = new (int Bought, int Count, double Step)?[grits.Length];
        var before = new int[grits.Length];
        best[start] = (bought[start] ? 1 : 0, 1, 0);
        for (var to = start + 1; to < grits.Length; to++)
        {
            for (var from = start; from < to; from++)
            {
                var step = grits[from].ParticleMicrometres / grits[to].ParticleMicrometres;
                if (best[from] is not { } way || !(step <= largestStep)) continue;
                var next = (way.Bought + (bought[to] ? 1 : 0), way.Count + 1, Math.Max(way.Step, step));
                if (best[to] is { } known && known.CompareTo(next) <= 0) continue;
                (best[to], before[to]) = (next, from);
            }
        }

        if (best[end] is null) return [];
        var found = ImmutableArray.CreateBuilder<Grit>();
        for (var at = end; ; at = before[at])
        {
            found.Add(grits[at]);
            if (at == start) break;
        }

        found.Reverse();
        return found.ToImmutable();
    }
}
