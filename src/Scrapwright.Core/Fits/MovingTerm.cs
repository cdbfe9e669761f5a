using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Fits;

/// <summary>One term of an opening, or of what goes into it, with the bodies that it may be.</summary>
/// <param name="Size">All of it together when fitted; below zero when it takes from the opening.</param>
/// <param name="Copies">How many bodies share the size.</param>
/// <param name="Bodies">The bodies it may be; at least one.</param>
/// <param name="Repeats">True when the bodies are guesses, any of which every copy may be; false when each is one copy.</param>
internal sealed record MovingTerm(Length Size, int Copies, ImmutableArray<MovingBody> Bodies, bool Repeats = false)
{
    /// <summary>How much it grows at least and at most, whichever of the bodies it is. [mm]</summary>
    internal (double LeastMm, double MostMm) ChangeMm(double fromPercent, double toPercent)
    {
        var (low, high) = Strain(fromPercent, toPercent);
        var sizeMm = Size.Millimetres;
        return sizeMm >= 0 ? (sizeMm * low, sizeMm * high) : (sizeMm * high, sizeMm * low);
    }

    /// <summary>The mean over the copies: of the lowest of them for the least, of the highest for the most.</summary>
    internal StrainRange Strain(double fromPercent, double toPercent)
    {
        var strains = Bodies.Select(b => b.Strain(fromPercent, toPercent)).ToArray();
        if (Repeats || Copies == 1 || Copies > strains.Length) return new(strains.Min(s => s.Low), strains.Max(s => s.High));
        return new(strains.Select(s => s.Low).Order().Take(Copies).Average(), strains.Select(s => s.High).OrderDescending().Take(Copies).Average());
    }
}
