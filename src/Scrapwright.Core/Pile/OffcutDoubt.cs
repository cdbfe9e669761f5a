using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Pile;

/// <summary>A size that is possible but so unlikely that the maker is asked back.</summary>
/// <param name="Part">Which size.</param>
/// <param name="Size">The size as understood.</param>
/// <param name="Question">The question for a person, such as <c>40 m long: is that right? Offcuts are mostly below 20 ft.</c></param>
public sealed record OffcutDoubt(EntryPart Part, Length Size, string Question);
