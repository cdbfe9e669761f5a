using System.Collections.Immutable;
using System.Text;

namespace Scrapwright.Core.Wood;

/// <summary>Reads a table carried inside the assembly: comma-separated, UTF-8, the first line names the columns. Anything wrong in it is a programming mistake and throws.</summary>
internal static class EmbeddedTable
{
    /// <summary>The rows of a table, in its order.</summary>
    /// <param name="name">Area and file, for example <c>Wood.species.csv</c>.</param>
    internal static ImmutableArray<EmbeddedRow> Read(string name)
    {
        using Stream stream = typeof(EmbeddedTable).Assembly.GetManifestResourceStream($"Scrapwright.Core.{name}")
            ?? throw new InvalidOperationException($"The resource {name} is missing. Maybe the project file no longer embeds it.");
        using var reader = new StreamReader(stream, Encoding.UTF8);

        string[] header = SplitLine(reader.ReadLine() ?? throw new InvalidDataException($"The table {name} is empty."));
        var rows = ImmutableArray.CreateBuilder<EmbeddedRow>();
        while (reader.ReadLine() is { } line)
        {
            string[] cells = SplitLine(line);
            if (cells.Length != header.Length)
            {
                throw new InvalidDataException($"Row {rows.Count + 1} of {name} has {cells.Length} cells, the header has {header.Length}: {line}");
            }

            rows.Add(new EmbeddedRow(name, header, cells));
        }

        return rows.ToImmutable();
    }

    /// <summary>Splits one line into cells; a cell with commas is in double quotes, and no cell holds a line end or a quote.</summary>
    internal static string[] SplitLine(string line)
    {
        var cells = new List<string>();
        int start = 0;
        while (start <= line.Length)
        {
            bool quoted = start < line.Length && line[start] == '"';
            int end = quoted ? line.IndexOf('"', start + 1) : line.IndexOf(',', start);
            if (quoted && end < 0)
            {
                throw new InvalidDataException($"A quote is not closed: {line}");
            }

            end = end < 0 ? line.Length : end;
            cells.Add(quoted ? line[(start + 1)..end] : line[start..end]);
            start = quoted ? end + 2 : end + 1;
        }

        return [.. cells];
    }
}
