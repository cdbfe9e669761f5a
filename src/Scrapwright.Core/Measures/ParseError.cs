namespace Scrapwright.Core.Measures;

/// <summary>Why a text was not understood.</summary>
/// <param name="Position">Where, as an index of a UTF-16 character counted from 0; the text's length if it ended too early.</param>
/// <param name="Found">What stands there; empty at the end of the text.</param>
/// <param name="Expected">What would have been understood, in words.</param>
public sealed record ParseError(int Position, string Found, string Expected)
{
    /// <summary>The whole sentence for a person, with the position counted from 1.</summary>
    public string Message => Messages.NotUnderstood(Position, Found, Expected);

    /// <inheritdoc cref="Message"/>
    public override string ToString() => Message;
}
