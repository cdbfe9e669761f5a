namespace Scrapwright.Core.Designs;

/// <summary>One option that a design cannot take.</summary>
/// <param name="Option">Key of the parameter.</param>
/// <param name="Found">What was given.</param>
/// <param name="Expected">What would do.</param>
public sealed record DesignProblem(string Option, string Found, string Expected);
