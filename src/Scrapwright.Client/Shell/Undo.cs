namespace Scrapwright.Client.Shell;

/// <summary>Something that was done and can be taken back.</summary>
/// <param name="Thing">What, as the maker calls it: Offcut W3.</param>
/// <param name="TakeBack">Brings it back; gives an empty text when done, else why not.</param>
/// <param name="Deed">What was done to it.</param>
public sealed record Undo(string Thing, Func<Task<string>> TakeBack, string Deed = "deleted");
