using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>The species of the gifts placed so far, to see whether a gift would be like another of its circle.</summary>
internal sealed class CircleLooks
{
    private readonly Dictionary<(string Circle, string Family), List<HashSet<string>>> placed = [];

    internal CircleLooks(Problem problem, IEnumerable<Segment> around)
    {
        foreach (var gift in around.SelectMany(s => s.GiftsIn(problem).Select(gift => (Gift: gift, s.Pattern))).GroupBy(s => s.Gift))
        {
            Add(problem.Gifts[gift.Key], [.. gift.Select(s => problem.Patterns[s.Pattern].Offcut.Species)]);
        }
    }

    internal void Add(GiftDemand gift, HashSet<string> species)
    {
        if (!placed.TryGetValue(KeyOf(gift), out var list))
        {
            placed[KeyOf(gift)] = list = [];
        }

        list.Add(species);
    }

    /// <summary>True when a gift of the same circle and family has exactly these species.</summary>
    internal bool HasLike(GiftDemand gift, HashSet<string> species) =>
        gift.Gift.Circle.Length > 0 && placed.TryGetValue(KeyOf(gift), out var list) && list.Any(species.SetEquals);

    private static (string Circle, string Family) KeyOf(GiftDemand gift) => (gift.Gift.Circle.ToUpperInvariant(), gift.Product.Family);
}
