using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Pile;

/// <summary>A stretch of an offcut that the plan cuts round, or keeps because the maker likes it.</summary>
/// <param name="Kind">What is wrong there.</param>
/// <param name="From">Where it begins, from the marked end, along the grain.</param>
/// <param name="To">Where it ends, from the marked end; never before <paramref name="From"/>.</param>
public sealed record Defect(DefectKind Kind, Length From, Length To)
{
    /// <summary>Where it lies across the width; null when it takes all of it or nobody measured.</summary>
    public WidthStretch? Across { get; init; }

    /// <summary>True when it may show in a gift: strips with it are used like clear ones.</summary>
    public bool IsKept { get; init; }
}
