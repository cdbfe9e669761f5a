using System.Collections.Immutable;

namespace Scrapwright.Files;

/// <summary>Options of a gift in one cell: <c>count=4; size=4 in</c>.</summary>
internal static class OptionCells
{
    private const string Column = "options";

    internal static ImmutableSortedDictionary<string, string> Read(TableRow row, ProblemList problems)
    {
        var options = ImmutableSortedDictionary.CreateBuilder<string, string>();
        foreach (var part in row[Column].Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var equals = part.IndexOf('=', StringComparison.Ordinal);
            var key = equals > 0 ? part[..equals].Trim().ToLowerInvariant() : "";
            if (key.Length == 0) row.Refuse(Column, part, FileMessages.AnOption, problems);
            else if (!options.TryAdd(key, part[(equals + 1)..].Trim())) row.Refuse(Column, part, "each option only once", problems);
        }

        return options.ToImmutable();
    }

    internal static string Write(ImmutableSortedDictionary<string, string> options) => string.Join("; ", options.Select(option => $"{option.Key}={option.Value}"));

    /// <summary>The column of a value by its path: that of an option is in this cell.</summary>
    internal static string ColumnOf(string path) => path.StartsWith(Column, StringComparison.Ordinal) ? Column : path;
}
