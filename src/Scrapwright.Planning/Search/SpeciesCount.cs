using Google.OrTools.Sat;

namespace Scrapwright.Planning.Search;

/// <summary>How many strips of one species a glue-up or a set of alike runs has.</summary>
/// <param name="Species">Key of the species.</param>
/// <param name="Count">The number.</param>
/// <param name="IsPresent">Whether it is above zero.</param>
internal sealed record SpeciesCount(string Species, IntVar Count, BoolVar IsPresent);
