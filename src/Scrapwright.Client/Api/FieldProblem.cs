namespace Scrapwright.Client.Api;

/// <summary>One wrong value.</summary>
/// <param name="Field">Where: the path of a JSON field such as <c>offcut.width</c>, or file, line and column such as <c>pile.csv line 3, width</c>.</param>
/// <param name="Found">What was given.</param>
/// <param name="Expected">What would do.</param>
public sealed record FieldProblem(string Field, string Found, string Expected);
