using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Fits;

/// <summary>Whether a fit holds through the year.</summary>
public abstract record FitVerdict
{
    private FitVerdict()
    {
    }

    /// <summary>In every month the clearance is between the least and the most wanted.</summary>
    public sealed record Good : FitVerdict;

    /// <summary>Too tight in some months; a wider opening would do.</summary>
    /// <param name="Months">The months, 1 to 12, in order.</param>
    /// <param name="By">What is missing in the worst of them; the opening has to be so much wider, or a little less where its own wood moves.</param>
    /// <param name="Stuck">True when in some month what goes in is wider than the opening, false when it is only tighter than wanted.</param>
    public sealed record Jams(ImmutableArray<int> Months, Length By, bool Stuck) : FitVerdict;

    /// <summary>Too loose in some months; a narrower opening would do.</summary>
    /// <param name="Months">The months, 1 to 12, in order.</param>
    /// <param name="By">What is too much in the worst of them.</param>
    public sealed record Rattles(ImmutableArray<int> Months, Length By) : FitVerdict;

    /// <summary>The wood moves too much: no opening is wide enough in one season and narrow enough in another.</summary>
    /// <param name="Tight">The months in which it is too tight as it is, in order; may be empty.</param>
    /// <param name="Loose">The months in which it is too loose as it is, in order; may be empty.</param>
    /// <param name="By">How far the smallest opening that never jams is above the largest that never rattles.</param>
    public sealed record CannotBeBoth(ImmutableArray<int> Tight, ImmutableArray<int> Loose, Length By) : FitVerdict;
}
