using Scrapwright.Core.Gifts;

namespace Scrapwright.Planning.Ideas;

/// <summary>Free labels for gifts that are proposed: the last word of the design and a number.</summary>
internal sealed class IdeaLabels(IEnumerable<Gift> taken)
{
    private const int LongestStem = 12;

    private readonly HashSet<string> labels = new(taken.Select(g => g.Label), StringComparer.OrdinalIgnoreCase);

    internal string Next(string design)
    {
        var stem = design.Split('-', StringSplitOptions.RemoveEmptyEntries).LastOrDefault() ?? "gift";
        stem = stem[..Math.Min(stem.Length, LongestStem)];
        for (var number = 1; ; number++)
        {
            if (labels.Add($"{stem}{number}"))
            {
                return $"{stem}{number}";
            }
        }
    }
}
