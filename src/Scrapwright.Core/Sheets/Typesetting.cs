using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;

namespace Scrapwright.Core.Sheets;

/// <summary>Breaks text into lines that fit and sets the fractions in it as fractions.</summary>
internal static partial class Typesetting
{
    /// <summary>A space that keeps a number, its fraction and its unit on one line.</summary>
    internal const char Tie = '\u00a0';

    private const double FractionRaise = 0.27;
    private const double MmPerPt = 25.4 / 72;

    internal static ImmutableArray<TextRun> Runs(string text, double sizePt)
    {
        text = Clean(text);
        if (!text.Contains('/', StringComparison.Ordinal)) return [new(text.Length == 0 ? " " : text, sizePt)];
        var runs = ImmutableArray.CreateBuilder<TextRun>();
        var at = 0;
        foreach (Match match in Fraction().Matches(text))
        {
            var whole = match.Groups["whole"];
            Add(runs, text[at..(whole.Success ? whole.Index + whole.Length : match.Index)], sizePt);
            if (whole.Success) runs.Add(new(Tie.ToString(), sizePt * 0.4));
            // Small text needs larger figures in its fractions than a headline does.
            var small = sizePt * (sizePt < 12 ? 0.72 : 0.66);
            var hair = sizePt * MmPerPt * 0.045;
            runs.Add(new(match.Groups["over"].Value, small, sizePt * MmPerPt * FractionRaise, hair));
            runs.Add(new("\u2044", sizePt, 0, hair));
            runs.Add(new(match.Groups["under"].Value, small));
            at = match.Index + match.Length;
        }

        Add(runs, text[at..], sizePt);
        if (runs.Count == 0) runs.Add(new(" ", sizePt));
        return runs.ToImmutable();
    }

    internal static double WidthMm(string text, double sizePt, bool bold) =>
        Runs(text, sizePt).Sum(r => FontAdvances.WidthMm(r.Text, r.SizePt, bold) + r.SpaceMm);

    /// <summary>Lines no wider than asked; words that are wider are broken, after a hyphen or slash where there is one.</summary>
    internal static ImmutableArray<string> Wrap(string text, double sizePt, bool bold, double widthMm)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        var line = new StringBuilder();
        var space = FontAdvances.WidthMm(" ", sizePt, bold);
        double used = 0;
        foreach (var word in NumberAndUnit().Replace(Clean(text), Tie.ToString()).Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(w => Pieces(w, sizePt, bold, widthMm)))
        {
            // Word by word is never less than the whole line: the space before a fraction is set narrower than this one.
            var width = WidthMm(word, sizePt, bold);
            if (line.Length > 0 && used + space + width > widthMm)
            {
                lines.Add(line.ToString());
                line.Clear();
                used = 0;
            }

            if (line.Length > 0)
            {
                line.Append(' ');
                used += space;
            }

            line.Append(word);
            used += width;
        }

        if (line.Length > 0 || lines.Count == 0) lines.Add(line.ToString());
        return lines.ToImmutable();
    }

    /// <summary>The text on one line; cut off with an ellipsis when it is too wide.</summary>
    internal static string Shorten(string text, double sizePt, bool bold, double widthMm)
    {
        text = Clean(text);
        if (WidthMm(text, sizePt, bold) <= widthMm) return text;
        var keep = text.Length;
        while (keep > 0 && WidthMm(text[..keep] + "…", sizePt, bold) > widthMm) keep -= char.IsLowSurrogate(text[keep - 1]) ? 2 : 1;
        return text[..keep] + "…";
    }

    private static IEnumerable<string> Pieces(string word, double sizePt, bool bold, double widthMm)
    {
        while (WidthMm(word, sizePt, bold) > widthMm)
        {
            var fits = word.Length - 1;
            while (fits > 1 && WidthMm(word[..fits], sizePt, bold) > widthMm) fits--;
            var better = word.LastIndexOfAny(['-', '/', ',', Tie], Math.Max(0, fits - 1));
            if (better > 0) fits = better + 1;
            if (fits > 1 && char.IsHighSurrogate(word[fits - 1])) fits--;
            if (fits >= word.Length || fits < 1) break;
            yield return word[..fits];
            word = word[fits..];
        }

        yield return word;
    }

    private static void Add(ImmutableArray<TextRun>.Builder runs, string text, double sizePt)
    {
        if (text.Length > 0) runs.Add(new(text, sizePt));
    }

    // Control characters and lone surrogates have no place in XML or PDF.
    private static string Clean(string text)
    {
        if (!text.Any(c => char.IsControl(c) || char.IsSurrogate(c) || c is '\ufffe' or '\uffff')) return text;
        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
            clean.Append(Rune.IsControl(rune) ? " " : rune.Value is 0xfffe or 0xffff ? "\ufffd" : rune.ToString());
        return clean.ToString();
    }

    // The space inside 1 3/8 in, 3 ½ in, 9 mm.
    [GeneratedRegex(@"(?<=\d) (?=\d+/\d|[¼½¾])|(?<=[\d¼½¾]) (?=(?:in|mm|ft|h|min)\b)")]
    private static partial Regex NumberAndUnit();

    [GeneratedRegex(@"(?<![\w/.])(?:(?<whole>\d+)[ \u00a0])?(?<over>\d{1,3})/(?<under>2|4|8|16|32|64|128)(?![\w/])")]
    private static partial Regex Fraction();
}
