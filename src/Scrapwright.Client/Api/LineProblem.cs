namespace Scrapwright.Client.Api;

/// <summary>A pasted line that was not understood.</summary>
/// <param name="Line">Its number, from 1.</param>
/// <param name="Text">The line itself, so that it can be mended and pasted again.</param>
/// <param name="Position">Where in the line, as an index of a UTF-16 character from 0.</param>
/// <param name="Found">What stands there.</param>
/// <param name="Expected">What would do.</param>
public sealed record LineProblem(int Line, string Text, int Position, string Found, string Expected);
