using System.Collections.Immutable;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar;

/// <summary>What each work of a plan is for, and whether it is done already: found by going through the steps from the last to the first.</summary>
internal sealed class WorkUse
{
    private readonly Dictionary<(int Step, int Work), (ImmutableArray<string> Gifts, bool IsDone)> uses = [];

    internal WorkUse(Plan plan)
    {
        var order = plan.Made.Select((m, i) => (m.Gift, i)).DistinctBy(m => m.Gift).ToDictionary(m => m.Gift, m => m.i, StringComparer.Ordinal);
        var gifts = new Dictionary<string, ImmutableHashSet<string>>(StringComparer.Ordinal);
        foreach (var made in plan.Made)
            foreach (var part in made.Parts) gifts[part.Piece] = [made.Gift];
        var alike = plan.Steps.Where(s => s.Operation == Operation.PlaneToThickness).SelectMany(s => s.Works).SelectMany(w => w.In).ToHashSet(StringComparer.Ordinal);
        // Of pieces that somebody needs: true where the task that takes them is done.
        var taken = gifts.Keys.ToDictionary(piece => piece, _ => false, StringComparer.Ordinal);
        foreach (var step in plan.Steps.Reverse())
        {
            foreach (var (i, work) in step.Works.Index().Reverse())
            {
                var forGifts = work.Out.Select(o => gifts.GetValueOrDefault(o.Id)).OfType<ImmutableHashSet<string>>().Aggregate(ImmutableHashSet<string>.Empty, (a, b) => a.Union(b));
                var needed = work.Out.Where(o => taken.ContainsKey(o.Id)).ToArray();
                var isDone = IsMarked(plan, step, work) || (needed.Length > 0 && needed.All(o => taken[o.Id]));
                uses[(step.Number, i)] = ([.. forGifts.OrderBy(order.GetValueOrDefault)], isDone);
                foreach (var piece in work.In)
                {
                    // A rod is cut for several gifts; any other piece goes into one work only.
                    gifts[piece] = forGifts;
                    if (needed.Length > 0 || isDone) taken[piece] = isDone || IsMilled(plan, step, piece, alike);
                }
            }
        }
    }

    /// <summary>Labels of the gifts that get wood of a work, in the plan's order.</summary>
    internal ImmutableArray<string> Gifts(Step step, int work) => uses[(step.Number, work)].Gifts;

    /// <summary>True when the maker has marked what comes of it as glued, cut or milled.</summary>
    internal bool IsDone(Step step, int work) => uses[(step.Number, work)].IsDone;

    private static bool IsMarked(Plan plan, Step step, Work work) => step.Operation switch
    {
        Operation.GlueUp => plan.GlueUps.FirstOrDefault(g => g.Id == step.GlueUp) is { } glueUp && plan.Request.Choices.Glued.Any(g => g.Is(glueUp)),
        Operation.CrosscutBlanks => work.In.Any(piece => plan.Request.Choices.Cut.Any(b => b.Piece == piece)),
        _ => false,
    };

    // A strip that is milled comes next to the step that makes the strips of its glue-up alike, where it has to, else to the glue-up.
    private static bool IsMilled(Plan plan, Step step, string piece, HashSet<string> alike) =>
        !plan.Request.Choices.MilledStrips.IsEmpty
        && (step.Operation == Operation.PlaneToThickness || (step.Operation == Operation.GlueUp && !alike.Contains(piece)))
        && plan.GlueUps.SelectMany(g => g.Strips).FirstOrDefault(s => s.Piece == piece) is { } strip && plan.Request.Choices.MilledStrips.Any(m => m.Is(strip));
}
