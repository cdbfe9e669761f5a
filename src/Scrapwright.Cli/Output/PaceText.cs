using Scrapwright.Core.Calendar;
using Scrapwright.Core.Shops;

namespace Scrapwright.Cli.Output;

/// <summary>The maker's paces as lines of text.</summary>
internal static class PaceText
{
    /// <summary>All of them; none without readings.</summary>
    internal static IEnumerable<string> Lines(IReadOnlyCollection<TimeReading> times)
    {
        if (times.Count == 0) yield break;
        yield return $"Your own pace, from {PlanText.Count(times.Count, "reading")}:";
        foreach (var pace in ShopPaces.Of(times).Known) yield return $"  {PaceWords.Of(pace.Operation, pace.Setting)}: {PaceWords.Of(pace)}";
    }
}
