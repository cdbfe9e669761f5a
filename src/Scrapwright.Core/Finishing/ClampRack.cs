using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Finishing;

/// <summary>The clamps of the rack that reach across a glue-up, the strongest first.</summary>
internal sealed class ClampRack(Shop shop, Length width)
{
    private readonly ClampKind[] kinds =
        [.. shop.Clamps.Where(c => c.Reach >= width && c is { Count: > 0, ForceNewtons: > 0 }).OrderByDescending(c => c.ForceNewtons)];

    /// <summary>How many clamps give a force; more than the rack has when they do not suffice. Null when none reaches.</summary>
    internal Band? For(Band newtons) => kinds.Length == 0 ? null : new Band(For(newtons.Least), For(newtons.Most));

    private int For(int newtons)
    {
        long left = newtons;
        long count = 0;
        foreach (var kind in kinds)
        {
            var wanted = (left + kind.ForceNewtons - 1) / kind.ForceNewtons;
            var used = Math.Min(wanted, kind.Count);
            count += used;
            left -= used * kind.ForceNewtons;
            if (left <= 0) return (int)count;
        }

        // What is missing is counted in clamps of the strongest kind.
        return (int)(count + ((left + kinds[0].ForceNewtons - 1) / kinds[0].ForceNewtons));
    }
}
