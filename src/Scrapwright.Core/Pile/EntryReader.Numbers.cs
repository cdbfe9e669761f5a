using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Pile;

internal sealed partial class EntryReader
{
    private readonly List<WrittenSize> sizes = [];
    private bool nextIsJoined;

    private bool ReadNumber()
    {
        var joined = nextIsJoined;
        nextIsJoined = false;
        var negative = Peek(at) == '-' && StartsNumber(at + 1);
        if (!negative && !StartsNumber(at)) return false;
        var start = at;
        if (negative) at++;
        if (ReadSize(joined) is not { } size) return true;
        if (negative)
        {
            Problem(start, at, EntryMessages.AboveZero);
            sizes.Add(size);
            ReadJoin();
            return true;
        }

        if (ReadCountBehind(size) || ReadWarpBehind(size)) return true;
        var word = NextWord(at, out var wordStart);
        if (EntryWords.NamedSize(word) is { } named)
        {
            size = size with { Named = named };
            at = wordStart + word.Length;
        }

        sizes.Add(size);
        ReadJoin();
        return true;
    }

    /// <summary>The size at the cursor, which moves behind it; null, with a problem noted, when it is malformed.</summary>
    private WrittenSize? ReadSize(bool joined)
    {
        // In a list such as 14,2,1 a comma before the number says that the one behind it is no decimal mark either.
        var text = line.AsSpan();
        if (at > 1 && line[at - 1] == ',' && char.IsAsciiDigit(Peek(at - 2)) && text[at..].IndexOf(',') is > 0 and var comma) text = text[..(at + comma)];
        var reader = new LengthReader(text, bareUnit, allowNegative: false, wholeText: false);
        var start = at;
        if (!reader.TryRead(at, out var value))
        {
            while (at < line.Length && !char.IsWhiteSpace(line[at]) && line[at] is not ';') at++;
            Problem(start, at, reader.Error!.Expected);
            return null;
        }

        at = reader.End;
        var whole = -1;
        if (!reader.HadUnit && at - start <= 6 && !int.TryParse(text[start..at], System.Globalization.NumberStyles.None, null, out whole)) whole = -1;
        var number = text[start..at];
        var metric = reader.HadUnit
            ? number.ContainsAny('m', 'M')
            : bareUnit == LengthUnit.Millimetre && !number.Contains('/') && !LengthCharacters.TryGetFraction(number[^1], out _, out _);
        return new(start, at, value, reader.HadUnit, metric, whole, joined);
    }

    // "3 pcs", "3x walnut", "2 off"; "1 face" is no count.
    private bool ReadCountBehind(WrittenSize size)
    {
        if (size.Whole < 0) return false;
        var word = NextWord(at, out var start);
        if (EntryWords.IsFaceNoun(word) && size.Whole is 1 or 2)
        {
            at = start + word.Length;
            SetFaces(size.Whole == 2 ? Faces.BothSurfaced : Faces.OneSurfaced, size.Start, SkipFaceWords(at));
            return true;
        }

        if (EntryWords.IsPieces(word))
        {
            at = start + word.Length;
            SetCount(size.Whole, size.Start, at);
            return true;
        }

        var behind = SkipBlanks(at);
        if (behind >= line.Length || !IsTimes(line[behind]) || size.Joined) return false;
        var after = SkipBlanks(behind + 1);
        if (after >= line.Length || !char.IsLetter(line[after])) return false;
        SetCount(size.Whole, size.Start, behind + 1);
        at = behind + 1;
        return true;
    }

    private void ReadJoin()
    {
        var behind = SkipBlanks(at);
        if (behind >= line.Length) return;
        var after = behind;
        if (IsTimes(line[behind])) after = behind + 1;
        else if (EntryWords.IsOneOf(NextWord(behind, out _), "by")) after = behind + 2;
        else return;
        var next = SkipBlanks(after);
        if (StartsNumber(next) || (Peek(next) == '-' && StartsNumber(next + 1)))
        {
            nextIsJoined = true;
            at = next;
        }
        else if (next >= line.Length || !char.IsLetter(line[next]) || IsTimes(line[next]))
        {
            Problem(behind, after, EntryMessages.ASizeAfterTimes);
            at = after;
        }
    }

    // "x3", "× 3", "*3" that does not stand behind a size.
    private bool ReadTimes()
    {
        if (!IsTimes(line[at])) return false;
        var next = SkipBlanks(at + 1);
        if (!StartsNumber(next)) return false;
        var start = at;
        at = next;
        if (ReadSize(joined: false) is not { } size) return true;
        if (size.Whole < 0) Problem(start, at, EntryMessages.ACount);
        else SetCount(size.Whole, start, at);
        return true;
    }
}
