namespace Scrapwright.Core.Plans.Ideas;

/// <summary>Free labels for gifts that are proposed: the last word of the design and a number, such as <c>squares1</c>.</summary>
public sealed class IdeaLabels
{
    private const int LongestStem = 12;

    private readonly HashSet<string> labels;

    /// <summary>A maker of labels that avoids some.</summary>
    /// <param name="taken">Labels in use; case does not matter.</param>
    public IdeaLabels(IEnumerable<string> taken) => labels = new(taken, StringComparer.OrdinalIgnoreCase);

    /// <summary>The next free label for a gift of a design, which is then taken.</summary>
    /// <param name="design">Key of the design.</param>
    public string Next(string design)
    {
        ArgumentNullException.ThrowIfNull(design);
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
