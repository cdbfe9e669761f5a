namespace Scrapwright.Core.Plans.Choices;

/// <summary>A choice that means nothing, or can no longer hold, for the workshop as it is.</summary>
/// <param name="Path">Which choice, as a path of JSON names such as <c>pins[0]</c>.</param>
/// <param name="Found">What it says, in words.</param>
/// <param name="Expected">What would do.</param>
public sealed record ChoiceFault(string Path, string Found, string Expected);
