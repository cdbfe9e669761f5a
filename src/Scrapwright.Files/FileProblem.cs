namespace Scrapwright.Files;

/// <summary>One place in a file that cannot be used.</summary>
/// <param name="File">Name of the file within the workshop, such as <c>pile.csv</c>.</param>
/// <param name="Line">Counted from 1; 0 when the whole file is meant.</param>
/// <param name="Column">Character in the line, counted from 1; 0 when the whole line or file is meant.</param>
/// <param name="Found">What stands there; empty when something is missing.</param>
/// <param name="Expected">What would have been understood.</param>
public sealed record FileProblem(string File, int Line, int Column, string Found, string Expected)
{
    /// <summary>The whole sentence for a person.</summary>
    public string Message => FileMessages.Sentence(this);

    /// <inheritdoc cref="Message"/>
    public override string ToString() => Message;
}
