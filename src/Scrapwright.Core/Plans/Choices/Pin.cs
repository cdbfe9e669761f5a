namespace Scrapwright.Core.Plans.Choices;

/// <summary>The glue-ups of a part shall have at least one strip of an offcut.</summary>
/// <param name="Offcut">Label of the single offcut.</param>
/// <param name="Gift">Label of the gift.</param>
/// <param name="Part">Key of its panel part.</param>
public sealed record Pin(string Offcut, string Gift, string Part);
