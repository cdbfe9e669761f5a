using System.Globalization;
using System.Text;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Wood;

/// <summary>A table of reference values beside the tests, with a source in every row.</summary>
internal static class ReferenceTable
{
    /// <summary>The rows by column name.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Read(string name)
    {
        using Stream stream = typeof(ReferenceTable).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"{name} is missing.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        string[] header = EmbeddedTable.SplitLine(reader.ReadLine()!);
        var rows = new List<IReadOnlyDictionary<string, string>>();
        while (reader.ReadLine() is { } line)
        {
            rows.Add(header.Zip(EmbeddedTable.SplitLine(line)).ToDictionary(cell => cell.First, cell => cell.Second));
        }

        return rows;
    }

    public static double? Number(this IReadOnlyDictionary<string, string> row, string column) =>
        row[column].Length == 0 ? null : double.Parse(row[column], CultureInfo.InvariantCulture);
}
