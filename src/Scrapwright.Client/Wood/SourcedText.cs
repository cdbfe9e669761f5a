using Scrapwright.Core.Wood;

namespace Scrapwright.Client.Wood;

/// <summary>A sentence of the wood tables with its source taken off its end, so that it can be set smaller.</summary>
/// <param name="Text">The sentence.</param>
/// <param name="Source">Key of the source, or <c>common practice</c>, or <c>from memory</c>; empty when the sentence names none.</param>
public readonly record struct SourcedText(string Text, string Source)
{
    private const string Practice = "Common practice, no source";
    private const string Memory = "From memory";

    /// <summary>Takes a sentence apart.</summary>
    /// <param name="sentence">Such as <see cref="Species.Cautions"/> have.</param>
    public static SourcedText Of(string sentence)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        var text = sentence.TrimEnd();
        if (text.EndsWith(Practice, StringComparison.Ordinal)) return new(text[..^Practice.Length].TrimEnd(), "common practice");
        if (text.EndsWith(Memory, StringComparison.Ordinal)) return new(text[..^Memory.Length].TrimEnd(), "from memory");
        var bracket = text.LastIndexOf('[');
        return bracket > 0 && text[^1] == ']' ? new(text[..bracket].TrimEnd(), text[(bracket + 1)..^1]) : new(text, "");
    }
}
