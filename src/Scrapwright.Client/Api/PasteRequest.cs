namespace Scrapwright.Client.Api;

/// <summary>Entry lines to add to the pile.</summary>
/// <param name="Text">One offcut a line, in any of the usual line ends; at most 1,000,000 characters.</param>
/// <param name="AllOrNothing">When true nothing is added unless every line is understood; when false the lines not understood are left out and reported.</param>
public sealed record PasteRequest(string Text, bool AllOrNothing = false);
