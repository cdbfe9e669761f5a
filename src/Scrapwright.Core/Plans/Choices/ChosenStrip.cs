using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans.Choices;

/// <summary>A strip as far as its place in a glue-up goes.</summary>
/// <param name="Offcut">Label of the single offcut.</param>
/// <param name="RoughWidth">Its share of the offcut's width before milling.</param>
public sealed record ChosenStrip(string Offcut, Length RoughWidth)
{
    /// <summary>A strip of a glue-up.</summary>
    public static ChosenStrip Of(Strip strip)
    {
        ArgumentNullException.ThrowIfNull(strip);
        return new(strip.Offcut, strip.RoughWidth);
    }
}
