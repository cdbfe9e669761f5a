namespace Scrapwright.Storage;

/// <summary>A label that stands on something else already, or twice in what was to be added.</summary>
/// <param name="Index">Which of the things to be added, from 0.</param>
/// <param name="Label">The label; it may be one of the single pieces of an entry that is taken.</param>
public sealed record TakenLabel(int Index, string Label);
