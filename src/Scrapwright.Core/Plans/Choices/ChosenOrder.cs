using System.Collections.Immutable;

namespace Scrapwright.Core.Plans.Choices;

/// <summary>The order in which the maker wants the strips of a glue-up.</summary>
/// <param name="Gift">Label of the gift.</param>
/// <param name="Part">Key of its panel part.</param>
/// <param name="Strips">The strips, lower edge first.</param>
public sealed record ChosenOrder(string Gift, string Part, ImmutableArray<ChosenStrip> Strips)
{
    /// <summary>The order a glue-up has.</summary>
    public static ChosenOrder Of(GlueUp glueUp)
    {
        ArgumentNullException.ThrowIfNull(glueUp);
        return new(glueUp.Gift, glueUp.Part, [.. glueUp.Strips.Select(ChosenStrip.Of)]);
    }
}
