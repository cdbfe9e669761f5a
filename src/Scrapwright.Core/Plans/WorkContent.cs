using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans;

/// <summary>How long steps take, from the shop's times.</summary>
public static class WorkContent
{
    /// <summary>Minutes with a hand on it: set-up once and every piece. An operation the shop has no time for counts 5 and 2; gluing face to face as gluing up.</summary>
    public static int HandsOnMinutes(Operation operation, int pieces, Shop shop)
    {
        var time = Find(operation, shop);
        return time is null ? 5 + (2 * pieces) : time.SetUpMinutes + (time.EachMinutes * pieces);
    }

    /// <summary>Minutes of waiting afterwards.</summary>
    public static int WaitMinutes(Operation operation, Shop shop) => Find(operation, shop)?.WaitMinutes ?? 0;

    private static WorkTime? Find(Operation operation, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        var time = shop.Times.FirstOrDefault(t => t.Operation == operation);

        // A shop written down before boards were glued face to face has no time of its own for it: the glue takes as long.
        return time is null && operation == Operation.FaceGlue ? shop.Times.FirstOrDefault(t => t.Operation == Operation.GlueUp) : time;
    }
}
