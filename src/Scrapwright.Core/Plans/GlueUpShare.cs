namespace Scrapwright.Core.Plans;

/// <summary>What another gift gets from a glue-up.</summary>
/// <param name="Gift">Label of the gift.</param>
/// <param name="Part">Key of its panel part, of the same size and looks as the one the glue-up is named for.</param>
/// <param name="Pieces">How many copies of the part; at least 1.</param>
public sealed record GlueUpShare(string Gift, string Part, int Pieces);
