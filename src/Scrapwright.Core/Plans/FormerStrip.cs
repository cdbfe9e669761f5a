using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans;

/// <summary>Strips alike in use, offcut and width that the plan before had.</summary>
/// <param name="Gift">Label of the gift.</param>
/// <param name="Part">Key of the panel part; empty for boards of solid parts.</param>
/// <param name="Offcut">Label of the single offcut.</param>
/// <param name="RoughWidth">Share of the offcut's width before milling.</param>
/// <param name="Count">How many; at least 1.</param>
public sealed record FormerStrip(string Gift, string Part, string Offcut, Length RoughWidth, int Count);
