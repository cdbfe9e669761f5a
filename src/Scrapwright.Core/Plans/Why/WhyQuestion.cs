namespace Scrapwright.Core.Plans.Why;

/// <summary>A question about a plan.</summary>
/// <param name="Kind">What is asked.</param>
/// <param name="Gift">Label of the gift that is asked about.</param>
/// <param name="Part">Key of its panel part; empty for the gift as a whole.</param>
/// <param name="Offcut">Label of the single offcut that is asked about; empty otherwise.</param>
public sealed record WhyQuestion(WhyKind Kind, string Gift, string Part = "", string Offcut = "")
{
    /// <summary>Why a gift is not made.</summary>
    public static WhyQuestion NotMade(string gift) => new(WhyKind.NotMade, gift);

    /// <summary>Why a strip of this offcut is in the glue-ups of a part.</summary>
    public static WhyQuestion ThisOffcut(string gift, string part, string offcut) => new(WhyKind.ThisOffcut, gift, part, offcut);

    /// <summary>Why the panels of a part are resawn, or are not.</summary>
    public static WhyQuestion Resawing(string gift, string part) => new(WhyKind.Resawing, gift, part);

    /// <summary>Why a part takes as many glue-ups as it does.</summary>
    public static WhyQuestion GlueUps(string gift, string part) => new(WhyKind.GlueUps, gift, part);
}
