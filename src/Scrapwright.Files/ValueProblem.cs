namespace Scrapwright.Files;

/// <summary>One value of a shop or a gift that breaks a rule, wherever it came from: a file or a screen.</summary>
/// <param name="Path">Which value, as a path of JSON names such as <c>clamps[0].reach</c>.</param>
/// <param name="Found">What it is.</param>
/// <param name="Expected">What would do.</param>
public sealed record ValueProblem(string Path, string Found, string Expected);
