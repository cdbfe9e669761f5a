namespace Scrapwright.Core.Finishing;

/// <summary>One short line of advice, in the maker's units.</summary>
/// <param name="Name">One or two words.</param>
/// <param name="Text">The rest.</param>
public sealed record AdviceFact(string Name, string Text);
