using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Pile;

internal sealed partial class EntryReader
{
    private bool ReadWord()
    {
        if (!char.IsLetter(line[at])) return false;
        if (ReadSpecies()) return true;
        var start = at;
        var end = WordEnd(at);
        if (!EntryWords.TryFind(line.AsSpan(start, end - start), out var kind, out var value))
        {
            AddUnknown(start, end);
            at = end;
            return true;
        }

        at = end;
        switch (kind)
        {
            case EntryWordKind.Remark:
                AddNote(start, end);
                break;
            case EntryWordKind.Number:
                SetCount(value, start, SkipPieces(end));
                break;
            case EntryWordKind.CountAhead:
                ReadCountAhead(start);
                break;
            case EntryWordKind.HowManyFaces:
                ReadHowMany(start, value);
                break;
            case EntryWordKind.Faces:
                ReadFaces(start, (Faces)value);
                break;
            case EntryWordKind.Rings:
                SetRings((RingOrientation)value, start, SkipSawn(end));
                break;
            case EntryWordKind.Flat:
                if (SkipSawn(end) > end) SetRings(RingOrientation.Flat, start, at);
                else Problem(start, end, EntryMessages.FlatSawn);
                break;
            case EntryWordKind.Warp:
                ReadWarp((EntryPart)value, start);
                break;
            case EntryWordKind.Defect:
                ReadDefect((DefectKind)value, start);
                break;
            case EntryWordKind.No:
                ReadNo(start);
                break;
            case EntryWordKind.Note:
                TakeNote(Peek(SkipBlanks(end)) == ':' ? SkipBlanks(end) + 1 : end);
                break;
            case EntryWordKind.Filler:
                break;
        }

        return true;
    }

    // "no knots", "not cupped": nothing to cut round, but worth keeping as a note.
    private void ReadNo(int start)
    {
        var word = NextWord(at, out var next);
        if (EntryWords.TryFind(word, out var kind, out _) && kind is EntryWordKind.Defect or EntryWordKind.Warp) at = next + word.Length;
        AddNote(start, at);
    }

    private void ReadCountAhead(int start)
    {
        SkipSeparators();
        if (at < line.Length && StartsNumber(at))
        {
            if (ReadSize(joined: false) is not { } size) return;
            SetCount(size.Whole, start, at);
        }
        else
        {
            Problem(start, at, EntryMessages.ACount);
        }
    }

    // "one face", "both sides planed"; otherwise a count.
    private void ReadHowMany(int start, int value)
    {
        var noun = NextWord(at, out var nounStart);
        if (!EntryWords.IsFaceNoun(noun))
        {
            SetCount(value, start, SkipPieces(at));
            return;
        }

        at = nounStart + noun.Length;
        SetFaces(value == 1 ? Faces.OneSurfaced : Faces.BothSurfaced, start, SkipFaceWords(at));
    }

    private void ReadFaces(int start, Faces word)
    {
        // "rough sawn", "surfaced one side", "planed 2 faces"
        if (word == Faces.Rough) SkipSawn(at);
        var howMany = NextFaceCount(at, out var end);
        if (howMany > 0) at = end;
        SetFaces(word == Faces.BothSurfaced && howMany == 1 ? Faces.OneSurfaced : word, start, at);
    }

    private int NextFaceCount(int position, out int end)
    {
        end = position;
        var start = SkipBlanks(position);
        if (start >= line.Length) return 0;
        var word = WordAt(start);
        var howMany = EntryWords.IsOneOf(word, "one", "1") ? 1 : EntryWords.IsOneOf(word, "two", "2", "both") ? 2 : 0;
        if (howMany == 0) return 0;
        var noun = NextWord(start + word.Length, out var nounStart);
        if (!EntryWords.IsFaceNoun(noun)) return 0;
        end = nounStart + noun.Length;
        return howMany;
    }

    private int SkipFaceWords(int position)
    {
        var word = NextWord(position, out var start);
        if (EntryWords.TryFind(word, out var kind, out var value) && kind == EntryWordKind.Faces && value == (int)Faces.BothSurfaced) at = start + word.Length;
        return at;
    }

    private int SkipSawn(int position)
    {
        var word = NextWord(position, out var start);
        if (EntryWords.IsSawn(word)) at = start + word.Length;
        return at;
    }

    private int SkipPieces(int position)
    {
        var word = NextWord(position, out var start);
        if (EntryWords.IsPieces(word)) at = start + word.Length;
        return at;
    }

    private void SetFaces(Faces value, int start, int end)
    {
        if (!Claim(EntryPart.Faces, start, end)) return;
        faces = value;
        Reading(start, end, EntryPart.Faces, value switch { Faces.Rough => "both faces rough", Faces.OneSurfaced => "one face surfaced", _ => "both faces surfaced" });
    }

    private void SetRings(RingOrientation value, int start, int end)
    {
        if (!Claim(EntryPart.Rings, start, end)) return;
        rings = value;
        Reading(start, end, EntryPart.Rings, value switch { RingOrientation.Quarter => "quarter sawn", RingOrientation.Rift => "rift sawn", _ => "flat sawn" });
    }

    private void ReadWarp(EntryPart part, int start)
    {
        SkipSeparators();
        while (at < line.Length && EntryWords.IsOneOf(NextWord(at, out _), "by", "of", "about")) at = SkipBlanks(WordEnd(SkipBlanks(at)));
        if (at >= line.Length || !StartsNumber(at)) Problem(start, WordEnd(start), EntryMessages.HowMuch);
        else if (ReadSize(joined: false) is { } size) SetWarp(part, size, start, at);
    }

    // "1/16 cup": a warp word behind a number, unless it has a number of its own.
    private bool ReadWarpBehind(WrittenSize size)
    {
        if (size.Joined) return false;
        var word = NextWord(at, out var start);
        if (!EntryWords.TryFind(word, out var kind, out var value) || kind != EntryWordKind.Warp) return false;
        var end = start + word.Length;
        var next = end;
        while (next < line.Length && (char.IsWhiteSpace(line[next]) || line[next] is ':' or '=')) next++;
        if (StartsNumber(next) || EntryWords.IsOneOf(NextWord(next, out _), "by", "of", "about")) return false;
        at = end;
        SetWarp((EntryPart)value, size, size.Start, at);
        return true;
    }

    private void SetWarp(EntryPart part, WrittenSize size, int start, int end)
    {
        if (!Claim(part, start, end)) return;
        if (part == EntryPart.Cup) cup = size.Value;
        else if (part == EntryPart.Bow) bow = size.Value;
        else twist = size.Value;
        Reading(start, end, part, $"{SizeText(size)} of {(part == EntryPart.Cup ? "cup" : part == EntryPart.Bow ? "bow" : "twist")}");
    }
}
