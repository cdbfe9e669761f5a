using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Fits;

/// <summary>What to set an option to so that a fit holds.</summary>
/// <param name="Option">Key of the design's parameter.</param>
/// <param name="Value">The value: on one of the maker's marks where one lies in the range, exact otherwise.</param>
public sealed record FitSetting(string Option, Length Value);
