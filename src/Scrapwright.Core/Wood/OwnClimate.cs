using System.Collections.Immutable;

namespace Scrapwright.Core.Wood;

/// <summary>A year's air that the maker measured, by a name of their own.</summary>
/// <param name="Name">What the maker calls it; it is chosen by this name.</param>
/// <param name="Months">January to December: twelve months.</param>
public sealed record OwnClimate(string Name, ImmutableArray<ClimateMonth> Months);
