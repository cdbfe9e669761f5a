using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Pile;

internal sealed partial class EntryReader
{
    private readonly List<WrittenDefect> writtenDefects = [];
    private readonly List<Defect> defects = [];

    /// <summary>Reads a text of nothing but defects.</summary>
    internal ParseResult<ImmutableArray<Defect>> ReadDefects(Length onLength, Length onWidth)
    {
        (length, width) = (onLength, onWidth);
        while (SkipSeparators())
        {
            var start = at;
            var end = WordEnd(at);
            if (EntryWords.TryFind(line.AsSpan(start, end - start), out var kind, out var value) && kind == EntryWordKind.Defect)
            {
                at = end;
                ReadDefect((DefectKind)value, start);
                continue;
            }

            Problem(start, Math.Max(end, start + 1), EntryMessages.ADefect);
            break;
        }

        SettleDefects();
        return problems.Count == 0
            ? ParseResult.Ok<ImmutableArray<Defect>>([.. defects])
            : ParseResult.Failed<ImmutableArray<Defect>>(problems[0].Column - 1, problems[0].Found, problems[0].Expected);
    }

    // "knot 4-5", "knot at 7", "knots 2-3, 8-9 and 11", "split last 2", "nail hole at 3", "sapwood across 0-1/2", "knot 4-5 across last 1 keep".
    private void ReadDefect(DefectKind kind, int start)
    {
        if (EntryWords.IsOneOf(NextWord(at, out var next), "hole", "holes", "mark", "marks", "edge")) at = WordEnd(next);
        var first = writtenDefects.Count;
        var any = false;
        do
        {
            var here = any ? at : start;
            if (ReadPlace() is not { } place) break;
            any = true;
            if (place.From is { } from)
            {
                writtenDefects.Add(new(kind, place.Place, from, place.To, here, at));
                SkipFromTheEnd();
            }
        }
        while (AnotherPlaceFollows());
        if (!any && EntryWords.IsOneOf(NextWord(at, out _), "across"))
        {
            any = true;
            writtenDefects.Add(new(kind, WrittenDefect.Places.All, default, default, start, at));
        }

        if (any) ReadManner(first);
        else Problem(start, WordEnd(start), EntryMessages.Where);
    }

    // "across 0-1/2", "across last 1/2", "keep": said of all the places before.
    private void ReadManner(int first)
    {
        while (true)
        {
            var word = NextWord(at, out var next);
            if (EntryWords.IsOneOf(word, "across"))
            {
                at = next + word.Length;
                if (ReadPlace() is not { } place) Problem(next, at, EntryMessages.WhereAcross);
                else if (place.From is { } from) Change(d => d with { AcrossPlace = place.Place, AcrossFrom = from, AcrossTo = place.To, End = at });
            }
            else if (EntryWords.IsOneOf(word, "keep", "kept"))
            {
                at = next + word.Length;
                Change(d => d with { IsKept = true, End = at });
            }
            else
            {
                return;
            }
        }

        void Change(Func<WrittenDefect, WrittenDefect> change)
        {
            for (var i = first; i < writtenDefects.Count; i++) writtenDefects[i] = change(writtenDefects[i]);
        }
    }

    /// <summary>A place; null when none follows, without its first size when that was no size.</summary>
    private (WrittenDefect.Places Place, WrittenSize? From, WrittenSize To)? ReadPlace()
    {
        var place = WrittenDefect.Places.At;
        while (true)
        {
            var next = SkipBlanks(at);
            if (Peek(next) is '@' or ':' or '=')
            {
                at = next + 1;
                continue;
            }

            var word = NextWord(at, out next);
            if (EntryWords.IsOneOf(word, "last")) place = WrittenDefect.Places.Last;
            else if (EntryWords.IsOneOf(word, "first")) place = WrittenDefect.Places.First;
            else if (!EntryWords.IsOneOf(word, "at", "from", "in", "the", "near", "about", "between", "and")) break;
            at = next + word.Length;
        }

        at = SkipBlanks(at);
        if (!StartsNumber(at)) return null;
        if (ReadSize(joined: false) is not { } from) return (place, null, default);
        var to = from;
        if (place == WrittenDefect.Places.At && SkipDash() && ReadSize(joined: false) is { } second)
        {
            place = WrittenDefect.Places.Stretch;
            to = second;
            if (to.HadUnit && !from.HadUnit && Reread(from, to) is { } shared) from = shared;
        }

        return (place, from, to);
    }

    private bool SkipDash()
    {
        var next = SkipBlanks(at);
        if (Peek(next) == '-' || (next < line.Length && line[next] == '—')) next++;
        else if (EntryWords.IsOneOf(NextWord(at, out _), "to", "till", "until", "and")) next = WordEnd(next);
        else if (Peek(next) == '.' && Peek(next + 1) == '.') next += 2;
        else return false;
        next = SkipBlanks(next);
        if (!StartsNumber(next)) return false;
        at = next;
        return true;
    }

    // "4 in from the marked end"
    private void SkipFromTheEnd()
    {
        var next = at;
        var any = false;
        while (true)
        {
            var word = NextWord(next, out var start);
            if (EntryWords.IsOneOf(word, "end"))
            {
                at = start + word.Length;
                return;
            }

            if (!EntryWords.IsOneOf(word, "from", "the", "marked", "near") || (!any && !EntryWords.IsOneOf(word, "from", "near"))) return;
            any = true;
            next = start + word.Length;
        }
    }

    // Behind "and" a number is another place; behind a comma only a stretch is, since a lone number may be a size.
    private bool AnotherPlaceFollows()
    {
        var next = SkipBlanks(at);
        var and = Peek(next) is '&' or '+' ? next + 1 : EntryWords.IsOneOf(NextWord(at, out _), "and") ? WordEnd(next) : -1;
        if (and >= 0)
        {
            var behind = SkipBlanks(and);
            if (!StartsNumber(behind) && !EntryWords.IsOneOf(NextWord(and, out _), "at", "from", "last", "first")) return false;
            at = and;
            return true;
        }

        if (Peek(next) != ',' || !StartsNumber(SkipBlanks(next + 1))) return false;
        var kept = at;
        at = SkipBlanks(next + 1);
        var problemCount = problems.Count;
        var isStretch = ReadSize(joined: false) is not null && SkipDash();
        if (problems.Count > problemCount) problems.RemoveRange(problemCount, problems.Count - problemCount);
        at = isStretch ? next + 1 : kept;
        return isStretch;
    }

    private void SettleDefects()
    {
        foreach (var written in writtenDefects)
        {
            var (from, to) = length.IsPositive ? written.On(length) : (written.From.Value, written.To.Value);
            if (length.IsPositive && (from.IsNegative || from >= length || to > length))
            {
                Problem(written.From.Start, Math.Max(written.From.End, written.To.End), EntryMessages.WithinTheLength);
                continue;
            }

            var across = written.AcrossOn(width);
            if (width.IsPositive && across is { } wide && (wide.From.IsNegative || wide.From >= width || wide.To > width))
            {
                Problem(written.AcrossFrom.Start, Math.Max(written.AcrossFrom.End, written.AcrossTo.End), EntryMessages.WithinTheWidth);
                continue;
            }

            var defect = new Defect(written.Kind, from, to) { Across = across is { } a ? new(a.From, a.To) : null, IsKept = written.IsKept };
            defects.Add(defect);
            Reading(written.Start, written.End, EntryPart.Defect, TextOf(defect, written.From.Metric || written.AcrossFrom.Metric ? LengthUnit.Millimetre : LengthUnit.Inch));
        }
    }

    private static string TextOf(Defect defect, LengthUnit unit) =>
        $"{DefectWords.Of(defect.Kind)} from {defect.From.ToExactText(unit)} to {defect.To.ToExactText(unit)}"
        + (defect.Across is { } across ? $", across from {across.From.ToExactText(unit)} to {across.To.ToExactText(unit)}" : "")
        + (defect.IsKept ? ", kept" : "");
}
