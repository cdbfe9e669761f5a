using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Pile;

internal sealed partial class EntryReader
{
    private bool ReadNote()
    {
        if (line[at] != ';') return false;
        TakeNote(at + 1);
        return true;
    }

    private void TakeNote(int start)
    {
        start = SkipBlanks(start);
        at = line.Length;
        var end = line.Length;
        while (end > start && char.IsWhiteSpace(line[end - 1])) end--;
        if (end > start) AddNote(start, end);
    }

    private void AddNote(int start, int end)
    {
        var text = line[start..end];
        note = note.Length == 0 ? text : $"{note}; {text}";
        Reading(start, end, EntryPart.Note, text);
    }

    // "(3)" is a count; other brackets are a note.
    private bool ReadBracket()
    {
        if (line[at] is not ('(' or '[')) return false;
        var close = line.IndexOf(line[at] == '(' ? ')' : ']', at);
        var start = at;
        if (close < 0)
        {
            Problem(at, line.Length, "a closing bracket");
            at = line.Length;
            return true;
        }

        at = close + 1;
        var inside = line.AsSpan(start + 1, close - start - 1).Trim();
        if (inside.Length > 0 && IsTimes(inside[0])) inside = inside[1..].Trim();
        var digits = inside.IndexOfAnyExceptInRange('0', '9');
        if (digits > 0 && EntryWords.IsPieces(inside[digits..].Trim())) inside = inside[..digits];
        if (inside.Length is > 0 and <= 6 && inside.IndexOfAnyExceptInRange('0', '9') < 0) SetCount(int.Parse(inside), start, at);
        else if (inside.Length > 0) AddNote(start + 1, close);
        return true;
    }

    private void ReadUnknownSign()
    {
        var start = at++;
        if (char.IsHighSurrogate(line[start]) && at < line.Length && char.IsLowSurrogate(line[at])) at++;
        Problem(start, at, EntryMessages.AKnownWord);
    }

    private static string SizeText(WrittenSize size) =>
        size.Value.ToExactText(size.Metric ? LengthUnit.Millimetre : LengthUnit.Inch);
}
