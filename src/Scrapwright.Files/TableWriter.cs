using CsvHelper;

namespace Scrapwright.Files;

/// <summary>Writes a table with commas and plain line ends; the same rows always give the same text.</summary>
internal static class TableWriter
{
    internal static string Write(IReadOnlyList<string> columns, IEnumerable<string[]> rows)
    {
        using var text = new StringWriter();
        using (var writer = CsvWriter.Create(text, new CsvWriterOptions { Separator = ',', NewLine = "\n", Quoting = CsvQuoting.WhenNeededOrWhitespace, HasHeader = false }, true))
        {
            writer.WriteRecord([.. columns]);
            foreach (var row in rows) writer.WriteRecord(row);
        }

        return text.ToString();
    }
}
