using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Pile;

internal sealed partial class EntryReader
{
    // "W3: walnut …", or "W3 walnut …" where letters and digits look like nothing else.
    private void ReadLeadingLabel()
    {
        at = SkipBlanks(0);
        var end = at;
        while (end < line.Length && (char.IsAsciiLetterOrDigit(line[end]) || line[end] == '-')) end++;
        var text = line.AsSpan(at, end - at);
        if (!PileLabels.IsValid(text)) return;
        var marked = end < line.Length && line[end] == ':';
        if (marked ? SpeciesTable.Find(text) is not null || EntryWords.TryFind(text, out _, out _) : !IsLettersThenDigits(text)) return;
        if (!marked && end < line.Length && !char.IsWhiteSpace(line[end])) return;
        SetLabel(at, at, end, guessed: !marked);
        at = marked ? end + 1 : end;
    }

    private bool ReadMarkedLabel()
    {
        if (line[at] != '#') return false;
        var start = at++;
        var end = at;
        while (end < line.Length && (char.IsLetterOrDigit(line[end]) || line[end] == '-')) end++;
        if (PileLabels.IsValid(line.AsSpan(at, end - at))) SetLabel(start, at, end, guessed: false);
        else Problem(start, Math.Max(end, start + 1), EntryMessages.ALabel);
        at = end;
        return true;
    }

    private void SetLabel(int start, int textStart, int end, bool guessed)
    {
        if (!Claim(EntryPart.Label, start, end)) return;
        label = line[textStart..end];
        Reading(start, end, EntryPart.Label, $"label {label}", guessed);
    }

    private static bool IsLettersThenDigits(ReadOnlySpan<char> text)
    {
        var letters = 0;
        while (letters < text.Length && char.IsAsciiLetterUpper(text[letters])) letters++;
        if (letters is 0 or > 3 || letters == text.Length || text is ['X', ..]) return false;
        return text[letters..].IndexOfAnyExceptInRange('0', '9') < 0;
    }
}
