using System.Collections.Immutable;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Fits;

/// <summary>A climate with the moisture of its twelve months worked out once.</summary>
internal sealed class MoistureYear(Climate climate)
{
    // Definition: twelve months.
    private readonly ImmutableArray<double> percents = [.. Enumerable.Range(1, 12).Select(climate.MoisturePercent)];

    internal Climate Climate { get; } = climate;

    /// <summary>The driest month, 1 to 12, the first of equals.</summary>
    internal int DriestMonth => percents.IndexOf(DriestPercent) + 1;

    internal double DriestPercent => percents.Min();

    internal double DampestPercent => percents.Max();

    internal double MeanPercent => percents.Average();

    /// <summary>Moisture content in a month, 1 to 12 by definition. [%]</summary>
    internal double At(int month) =>
        month is >= 1 and <= 12 ? percents[month - 1] : throw new ArgumentOutOfRangeException(nameof(month), month, "A month is 1 to 12.");
}
