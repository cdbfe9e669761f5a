namespace Scrapwright.Core.Designs;

/// <summary>One copy of a part, with the number to write on it.</summary>
/// <param name="Part">Key of the part.</param>
/// <param name="Copy">Which copy, from 1.</param>
/// <param name="Mark">What to write on the wood, for example A1.</param>
public sealed record PartRef(string Part, int Copy, string Mark);
