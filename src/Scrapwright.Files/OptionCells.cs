using System.Collections.Immutable;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Files;

/// <summary>Options of a gift in one cell: <c>count=4; size=4 in</c>.</summary>
internal static class OptionCells
{
    private const string Column = "options";

    internal static ImmutableSortedDictionary<string, string> Read(TableRow row, ProblemList problems)
    {
        var options = GiftOptionText.Read(row[Column], out var bare, out var doubled);
        foreach (var part in bare) row.Refuse(Column, part, FileMessages.AnOption, problems);
        foreach (var part in doubled) row.Refuse(Column, part, "each option only once", problems);
        return options;
    }

    /// <summary>The column of a value by its path: that of an option is in this cell.</summary>
    internal static string ColumnOf(string path) => path.StartsWith(Column, StringComparison.Ordinal) ? Column : path;
}
