using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Pile;

/// <summary>Reads one entry line from left to right, each character a bounded number of times, then settles what the numbers mean.</summary>
internal sealed partial class EntryReader(string line, LengthUnit bareUnit)
{
    internal const int MostPieces = 999;

    private readonly List<EntryProblem> problems = [];
    private readonly List<EntryReading> readings = [];
    private readonly HashSet<EntryPart> given = [];
    private int at;
    private string label = "";
    private int count = 1;
    private Faces faces;
    private RingOrientation rings;
    private Length cup, bow, twist;
    private string note = "";

    internal EntryOutcome Read()
    {
        if (line.Length > EntryLine.LongestLine)
        {
            Problem(EntryLine.LongestLine, line.Length, EntryMessages.ShorterLine);
            return Refuse();
        }

        for (var i = 0; i < line.Length; i++)
        {
            if (!char.IsControl(line[i]) || line[i] == '\t') continue;
            Problem(i, i + 1, EntryMessages.PlainText);
            return Refuse();
        }

        ReadLeadingLabel();
        while (SkipSeparators())
        {
            if (!ReadNote() && !ReadMarkedLabel() && !ReadBracket() && !ReadNumber() && !ReadTimes() && !ReadWord()) ReadUnknownSign();
        }

        SettleSpecies();
        SettleSizes();
        SettleDefects();
        return problems.Count > 0 ? Refuse() : Accept();
    }

    private EntryOutcome.Understood Accept()
    {
        var offcut = new Offcut
        {
            Label = label,
            Species = species!.Key,
            Length = length,
            Width = width,
            Thickness = thickness,
            Count = count,
            Faces = faces,
            Rings = rings,
            Cup = cup,
            Bow = bow,
            Twist = twist,
            Defects = [.. defects],
            Note = note,
        };
        return new EntryOutcome.Understood(offcut, InOrder(), OffcutDoubts.Of(offcut, bareUnit));
    }

    private EntryOutcome.NotUnderstood Refuse() =>
        new([.. problems.OrderBy(problem => problem.Column)], InOrder());

    private ImmutableArray<EntryReading> InOrder()
    {
        readings.Sort((a, b) => a.Start.CompareTo(b.Start));
        return [.. readings];
    }

    private void Reading(int start, int end, EntryPart part, string text, bool guessed = false) =>
        readings.Add(new(start, end - start, part, text, guessed));

    private void Problem(int start, int end, string expected, params ReadOnlySpan<string> suggestions)
    {
        const int LongestShown = 30;
        var found = line.AsSpan(start, Math.Min(end - start, LongestShown)).ToString();
        if (found.Length == 1 && char.IsControl(found[0])) found = $"U+{(int)found[0]:X4}";
        problems.Add(new(start + 1, found, expected, [.. suggestions]));
    }

    /// <summary>Whether a part is told for the first time; a second time is a problem.</summary>
    private bool Claim(EntryPart part, int start, int end)
    {
        if (given.Add(part)) return true;
        Problem(start, end, EntryMessages.OnlyOnce);
        return false;
    }

    private void SetCount(long pieces, int start, int end, bool guessed = false)
    {
        if (pieces is < 1 or > MostPieces)
        {
            Problem(start, end, EntryMessages.ACount);
        }
        else if (Claim(EntryPart.Count, start, end))
        {
            count = (int)pieces;
            Reading(start, end, EntryPart.Count, pieces == 1 ? "1 piece" : $"{pieces} pieces", guessed);
        }
    }

    private char Peek(int position) => position < line.Length ? LengthCharacters.Fold(line[position]) : '\0';

    private bool SkipSeparators()
    {
        while (at < line.Length && IsSeparator(at)) at++;
        return at < line.Length;
    }

    // A dash with a blank behind parts words; a sign stands directly before its number, which then is refused.
    private bool IsSeparator(int position) => char.IsWhiteSpace(line[position]) || line[position] == '—' || Peek(position) switch
    {
        ',' or ':' or '=' or '&' or '|' => true,
        '.' => !char.IsAsciiDigit(Peek(position + 1)),
        '-' => position + 1 < line.Length && char.IsWhiteSpace(line[position + 1]),
        _ => false,
    };

    private int SkipBlanks(int position)
    {
        while (position < line.Length && char.IsWhiteSpace(line[position])) position++;
        return position;
    }

    private int WordEnd(int position)
    {
        var end = position;
        while (end < line.Length && (char.IsLetterOrDigit(line[end])
            || (end > position && Peek(end) is '-' or '\'' && end + 1 < line.Length && char.IsLetter(line[end + 1])))) end++;
        return end;
    }

    private ReadOnlySpan<char> WordAt(int position) => line.AsSpan(position, WordEnd(position) - position);

    private ReadOnlySpan<char> NextWord(int position, out int start)
    {
        start = SkipBlanks(position);
        return start < line.Length && char.IsLetter(line[start]) ? WordAt(start) : default;
    }

    private static bool IsTimes(char c) => c is 'x' or 'X' or '×' or '✕' or '╳' or '*';

    private bool StartsNumber(int position) => char.IsAsciiDigit(Peek(position))
        || (Peek(position) == '.' && char.IsAsciiDigit(Peek(position + 1)))
        || (position < line.Length && LengthCharacters.TryGetFraction(line[position], out _, out _));
}
