namespace Scrapwright.Core.Designs;

/// <summary>The option that sets the clearance of a fit.</summary>
/// <param name="Key">Key of the design's parameter.</param>
/// <param name="Shares">How many times the option's value is in the opening: 2 for a clearance on each side.</param>
public sealed record FitOption(string Key, int Shares);
