using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans;

/// <summary>A plan with the strips of one glue-up in another order.</summary>
public static class PlanOrder
{
    /// <summary>
    /// The plan with the strips of one glue-up in another order, all that follows from it worked out: lanes of every later piece, contrast, leftovers, where the wood went. The order
    /// becomes a choice of the plan's request. Whether it may be is for <see cref="PlanAudit"/> to say.
    /// </summary>
    /// <param name="plan">A plan that holds.</param>
    /// <param name="glueUp">Id of the glue-up.</param>
    /// <param name="order">For each place from the lower edge, which strip of the present order comes there: 0 to strips − 1, each once.</param>
    /// <exception cref="ArgumentException">No such glue-up, or no order of its strips.</exception>
    public static Plan With(Plan plan, string glueUp, ImmutableArray<int> order)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var old = plan.GlueUps.FirstOrDefault(g => g.Id == glueUp) ?? throw new ArgumentException($"The plan has no glue-up {glueUp}.", nameof(glueUp));
        if (order.IsDefault || !order.Order().SequenceEqual(Enumerable.Range(0, old.Strips.Length)))
        {
            throw new ArgumentException($"No order of {old.Strips.Length} strips. Maybe the glue-up has changed meanwhile.", nameof(order));
        }

        var species = plan.Stock().DistinctBy(o => o.Label).ToDictionary(o => o.Label, o => o.Species, StringComparer.Ordinal);
        var strips = order.Select((from, to) => old.Strips[from] with { HeartUp = old.Strips[to].HeartUp }).ToImmutableArray();
        var least = PanelOrder.LeastContrast([.. strips.Select(s => species.GetValueOrDefault(s.Offcut, ""))]);
        var now = old with { Strips = strips, LeastContrastHundredths = double.IsFinite(least) ? (int)Math.Floor(100 * least) : 0 };
        var request = plan.Request with { Choices = plan.Request.Choices.With(ChosenOrder.Of(now)) };
        var steps = new LaneReplay(plan).WithOrder(glueUp, [.. strips.Select(s => s.Piece)], out var pieces);
        var ordered = plan with
        {
            Request = request,
            Fingerprint = PlanJson.Fingerprint(request),
            GlueUps = plan.GlueUps.Replace(old, now),
            Steps = steps,
            Leftovers = LeftoversInOrder(plan, pieces),
        };
        return ordered with { Ledger = WoodLedger.Of(ordered), Levels = [.. plan.Levels.Select(l => l.Kind == LevelKind.Looks ? WithLooks(l, ordered) : l)] };
    }

    /// <summary>Whether strips are book-matched depends on their order.</summary>
    private static Level WithLooks(Level looks, Plan ordered)
    {
        var value = PlanScores.Of(ordered).Looks;
        return looks with { Value = value, Bound = Math.Max(looks.Bound, value) };
    }

    /// <summary>By the offcut at the lower edge, then as they come up.</summary>
    private static ImmutableArray<Leftover> LeftoversInOrder(Plan plan, IReadOnlyDictionary<string, Piece> pieces)
    {
        var place = plan.Stock().Select((o, i) => (o.Label, i)).DistinctBy(x => x.Label).ToDictionary(x => x.Label, x => x.i, StringComparer.Ordinal);
        var born = plan.Steps.SelectMany(s => s.Works).SelectMany(w => w.Out).Select(p => p.Id).Distinct().Select((id, i) => (id, i)).ToDictionary(x => x.id, x => x.i, StringComparer.Ordinal);
        return
        [
            .. plan.Leftovers.Select(l => l with { Piece = pieces.GetValueOrDefault(l.Piece.Id, l.Piece) })
                .OrderBy(l => l.Piece.Lanes is [var lane, ..] ? place.GetValueOrDefault(lane.Offcut) : int.MaxValue)
                .ThenBy(l => born.GetValueOrDefault(l.Piece.Id, -1)),
        ];
    }
}
