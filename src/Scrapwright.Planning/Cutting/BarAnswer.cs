namespace Scrapwright.Planning.Cutting;

/// <summary>What choosing among given patterns came to.</summary>
/// <param name="Found">One pattern for each bar; null when none was found.</param>
/// <param name="IsCertain">Whether no choice among these patterns is cheaper, or there is none.</param>
internal sealed record BarAnswer(List<BarPattern>? Found, bool IsCertain);
