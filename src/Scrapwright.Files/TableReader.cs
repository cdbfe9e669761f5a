using System.Collections.Immutable;
using System.Text;
using CsvHelper;
using Scrapwright.Core.Wood;

namespace Scrapwright.Files;

/// <summary>Reads a table from text; commas, semicolons or tabs separate the cells, whichever the first line has most of.</summary>
internal static class TableReader
{
    private const int MostRows = 20_000;

    /// <summary>The table, or null when its first line cannot be used; problems with single rows are noted and the rest is read.</summary>
    internal static Table? Read(string text, ImmutableArray<string> known, int required, ProblemList problems)
    {
        var separator = SeparatorOf(text);
        var isMalformed = false;
        var options = new CsvReaderOptions
        {
            Separator = separator,
            HasHeader = false,
            SkipEmptyLines = false,
            AllowLineBreaksInQuotes = true,
            TrackLineNumbers = true,

            // A quote within a cell is an inch mark and stands; what else is wrong with quotes is reported by record.
            OnMalformedRecord = bad => isMalformed |= bad.Reason is CsvMalformedReason.UnterminatedQuote or CsvMalformedReason.TextAfterClosingQuote,
        };
        using var reader = CsvReader.FromText(text, options);
        Dictionary<string, int>? columns = null;
        var rows = ImmutableArray.CreateBuilder<TableRow>();
        while (reader.Read())
        {
            var raw = Encoding.UTF8.GetString(reader.RawRecord);
            var cells = new string[reader.FieldCount];
            for (var i = 0; i < cells.Length; i++) cells[i] = reader.GetString(i);
            var begin = (int)reader.LineNumber;
            var places = CellPlaces.Of(raw, separator, begin, out var openQuote);
            if (openQuote is { } at) problems.Add(at.Line, at.Column, at.Text, FileMessages.ClosingQuote);
            else if (isMalformed) problems.Add(begin, 0, cells[0], FileMessages.ClosingQuote);
            var isBad = openQuote is not null || isMalformed;
            isMalformed = false;
            if (isBad || Array.TrueForAll(cells, string.IsNullOrWhiteSpace)) continue;
            if (columns is null)
            {
                columns = ReadNames(cells, places, known, required, problems);
                if (columns is null) return null;
                continue;
            }

            for (var i = columns.Count; i < cells.Length; i++)
            {
                if (!string.IsNullOrWhiteSpace(cells[i])) problems.Add(places[i].Line, places[i].Column, cells[i], FileMessages.NoMoreCells);
            }

            if (rows.Count == MostRows)
            {
                problems.Add(begin, 0, "", FileMessages.FewerRows);
                break;
            }

            rows.Add(new(begin, cells, places, columns));
        }

        if (columns is null && problems.Count == 0) problems.Add(1, 1, "", FileMessages.SomeRows);
        return columns is null ? null : new(separator, rows.ToImmutable());
    }

    private static Dictionary<string, int>? ReadNames(
        string[] cells, List<(int Line, int Column)> places, ImmutableArray<string> known, int required, ProblemList problems)
    {
        var before = problems.Count;
        var columns = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        for (var i = 0; i < cells.Length; i++)
        {
            var name = cells[i].Trim();
            if (name.Length == 0 && i == cells.Length - 1) continue;
            var place = places[Math.Min(i, places.Count - 1)];
            if (!known.Contains(name, StringComparer.OrdinalIgnoreCase)) problems.Add(place.Line, place.Column, name, FileMessages.AColumn(known, Nearest(name, known)));
            else if (!columns.TryAdd(name, i)) problems.Add(place.Line, place.Column, name, "each column only once");
        }

        for (var i = 0; i < required; i++)
        {
            if (!columns.ContainsKey(known[i])) problems.Add(places[0].Line, 0, "", FileMessages.TheColumn(known[i]));
        }

        return problems.Count == before ? columns : null;
    }

    internal static string Nearest(string name, IEnumerable<string> known)
    {
        var start = (name.Length <= 40 ? name : name[..40]).ToLowerInvariant();
        int Slips(string word) => Spelling.Distance(start, word.ToLowerInvariant());
        var best = known.MinBy(Slips) ?? "";
        return Slips(best) <= Math.Max(2, best.Length / 2) ? best : "";
    }

    private static char SeparatorOf(string text)
    {
        var start = text.AsSpan().TrimStart("\r\n \t");
        var end = start.IndexOfAny('\r', '\n');
        var names = end < 0 ? start : start[..end];
        var (commas, semicolons, tabs) = (names.Count(','), names.Count(';'), names.Count('\t'));
        return tabs > commas && tabs > semicolons ? '\t' : semicolons > commas ? ';' : ',';
    }
}
