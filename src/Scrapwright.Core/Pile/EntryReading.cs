namespace Scrapwright.Core.Pile;

/// <summary>How one stretch of an entry line was understood, for reading it back while it is typed.</summary>
/// <param name="Start">Where the stretch begins in the line, from 0.</param>
/// <param name="Length">How many characters it has.</param>
/// <param name="Part">What it tells.</param>
/// <param name="Text">What was understood, for a person, such as <c>14 3/8 in long</c>.</param>
/// <param name="Guessed">Whether it could have meant something else, so that the maker should look: a misspelt species, a word for several species, sizes in another order.</param>
public sealed record EntryReading(int Start, int Length, EntryPart Part, string Text, bool Guessed = false);
