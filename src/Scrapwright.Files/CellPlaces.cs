namespace Scrapwright.Files;

/// <summary>Finds where the cells of a raw record begin, which the CSV package does not say.</summary>
internal static class CellPlaces
{
    /// <summary>Line and column of each cell, from 1.</summary>
    /// <param name="raw">The record with its quotes.</param>
    /// <param name="separator">What stands between cells.</param>
    /// <param name="line">The line it begins in.</param>
    /// <param name="openQuote">The cell whose quotes are wrong, if any.</param>
    internal static List<(int Line, int Column)> Of(string raw, char separator, int line, out (int Line, int Column, string Text)? openQuote)
    {
        var places = new List<(int, int)>();
        openQuote = null;
        var (lineStart, at) = (0, 0);
        while (true)
        {
            var start = at;
            var place = (Line: line, Column: start - lineStart + 1);
            places.Add(place);
            while (at < raw.Length && raw[at] == ' ') at++;
            if (at < raw.Length && raw[at] == '"' && at == start)
            {
                at++;
                while (at < raw.Length && !(raw[at] == '"' && (at + 1 >= raw.Length || raw[at + 1] != '"')))
                {
                    if (raw[at] == '\n') (line, lineStart) = (line + 1, at + 1);
                    at += raw[at] == '"' ? 2 : 1;
                }

                var closed = at < raw.Length && (at + 1 >= raw.Length || raw[at + 1] == separator || raw[at + 1] is '\r' or '\n');
                if (!closed) openQuote ??= (place.Line, place.Column, raw[start..Math.Min(raw.Length, start + 40)].Split('\n')[0].Trim());
                at++;
            }

            while (at < raw.Length && raw[at] != separator && raw[at] is not '\n') at++;
            if (at >= raw.Length || raw[at] == '\n') return places;
            at++;
        }
    }
}
