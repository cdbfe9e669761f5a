namespace Scrapwright.Core.Plans.Choices;

/// <summary>A strip that is milled and not glued yet: its offcut stays cut as it is, and the strip goes into a glue-up of its part.</summary>
/// <param name="Gift">Label of the gift.</param>
/// <param name="Part">Key of the panel part.</param>
/// <param name="Strip">The strip, exactly as it was planned.</param>
public sealed record MilledStrip(string Gift, string Part, Strip Strip)
{
    /// <summary>True when a strip of a plan is this one, or was cut from it: then it bears its name with a letter behind.</summary>
    public bool Is(Strip strip)
    {
        ArgumentNullException.ThrowIfNull(strip);
        return strip.Offcut == Strip.Offcut && strip.RoughWidth == Strip.RoughWidth && strip.Length <= Strip.Length
            && strip.Piece.StartsWith(Strip.Piece, StringComparison.Ordinal) && strip.Piece[Strip.Piece.Length..].All(char.IsAsciiLetterLower);
    }
}
