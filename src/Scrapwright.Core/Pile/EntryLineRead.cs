namespace Scrapwright.Core.Pile;

/// <summary>One of many entry lines, understood.</summary>
/// <param name="Line">Its number in the text, from 1.</param>
/// <param name="Outcome">What was understood; the offcut has a label now.</param>
public sealed record EntryLineRead(int Line, EntryOutcome.Understood Outcome);
