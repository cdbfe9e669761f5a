using System.Collections.Immutable;

namespace Scrapwright.Storage;

/// <summary>What came of removing an occasion.</summary>
public abstract record RemoveOccasionOutcome
{
    private RemoveOccasionOutcome()
    {
    }

    /// <summary>It is removed and can be restored.</summary>
    public sealed record Removed : RemoveOccasionOutcome;

    /// <summary>It was not: gifts are for it, and would lose their date.</summary>
    /// <param name="Labels">Labels of those gifts; never empty.</param>
    public sealed record HasGifts(ImmutableArray<string> Labels) : RemoveOccasionOutcome;

    /// <summary>There is none of that id.</summary>
    public sealed record Missing : RemoveOccasionOutcome;
}
