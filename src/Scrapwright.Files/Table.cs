using System.Collections.Immutable;

namespace Scrapwright.Files;

/// <summary>A file of rows and named columns.</summary>
/// <param name="Separator">What stands between cells.</param>
/// <param name="Rows">The rows below the names, blank ones left out.</param>
internal sealed record Table(char Separator, ImmutableArray<TableRow> Rows)
{
    /// <summary>Where cells are not separated by commas, a comma in a number is a decimal mark.</summary>
    internal bool HasDecimalCommas => Separator != ',';
}
