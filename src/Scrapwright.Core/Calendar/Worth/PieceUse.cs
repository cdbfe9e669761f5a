using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar.Worth;

/// <summary>Which parts of which gifts the pieces of each step become, and how many: found by going through the steps from the last to the first.</summary>
internal sealed class PieceUse
{
    private readonly Dictionary<(int Step, string Piece), Dictionary<(string Gift, string Part), int>> uses = [];

    internal PieceUse(Plan plan)
    {
        var now = new Dictionary<string, Dictionary<(string Gift, string Part), int>>(StringComparer.Ordinal);
        foreach (var made in plan.Made)
            foreach (var part in made.Parts) now[part.Piece] = new() { [(made.Gift, part.Part)] = 1 };
        foreach (var step in plan.Steps.Reverse())
        {
            foreach (var work in step.Works.Reverse())
            {
                var becomes = Sum(work.Out.Select(o => now.GetValueOrDefault(o.Id)));
                foreach (var piece in work.In)
                {
                    // What is put together is no part any more: a part stays what it is. A rod is cut for several gifts, each in a work of its own.
                    if (becomes.Count > 0) now[piece] = step.Operation == Operation.CutRods ? Sum([now.GetValueOrDefault(piece), becomes]) : becomes;
                    uses[(step.Number, piece)] = now.GetValueOrDefault(piece) ?? [];
                }
            }
        }
    }

    /// <summary>What the pieces of a task become, of the gifts it is for.</summary>
    internal Dictionary<(string Gift, string Part), int> Of(WorkTask task) => Sum(task.Steps.SelectMany(_ => task.Pieces.Distinct(), (step, piece) => uses.GetValueOrDefault((step, piece))), task);

    /// <summary>True when a task is for one kind of part of a gift, and for nothing else.</summary>
    internal bool IsOnlyFor(WorkTask task, string gift, string part) => Of(task) is { Count: 1 } only && only.ContainsKey((gift, part)) && !IsPuttingTogether(task);

    /// <summary>True for what goes on all the same when a part is bought.</summary>
    internal static bool IsPuttingTogether(WorkTask task) => task.Operation is Operation.DryFit or Operation.Assemble;

    /// <summary>A gift's share of a task, or that of one kind of its parts. [1], 0 to 1</summary>
    internal decimal Share(WorkTask task, string gift, string? part = null)
    {
        if (!task.Gifts.Contains(gift)) return 0;
        var becomes = Of(task);
        if (part is null && task.Gifts is [_]) return 1;
        var all = becomes.Values.Sum();
        return all == 0 ? 0 : becomes.Where(b => b.Key.Gift == gift && (part is null || b.Key.Part == part)).Sum(b => b.Value) / (decimal)all;
    }

    private static Dictionary<(string Gift, string Part), int> Sum(IEnumerable<Dictionary<(string Gift, string Part), int>?> counts, WorkTask? of = null)
    {
        var sum = new Dictionary<(string Gift, string Part), int>();
        foreach (var (key, count) in counts.OfType<Dictionary<(string Gift, string Part), int>>().SelectMany(c => c))
        {
            if (of?.Gifts.Contains(key.Gift) != false) sum[key] = sum.GetValueOrDefault(key) + count;
        }

        return sum;
    }
}
