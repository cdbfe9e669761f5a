using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Fits;

/// <summary>What to set an option to so that a fit holds.</summary>
/// <param name="Option">Key of the design's parameter.</param>
/// <param name="Value">The value: on a mark of the maker's rule where one lies in the range, else on one of a calliper, else exact.</param>
public sealed record FitSetting(string Option, Length Value);
