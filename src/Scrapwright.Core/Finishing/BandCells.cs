using System.Globalization;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Finishing;

/// <summary>Bands in embedded tables: <c>30-60</c>.</summary>
internal static class BandCells
{
    internal static Band Band(this EmbeddedRow row, string column)
    {
        var text = row.Required(column);
        var dash = text.IndexOf('-', StringComparison.Ordinal);
        return dash > 0
            && int.TryParse(text.AsSpan(0, dash), NumberStyles.None, CultureInfo.InvariantCulture, out var least)
            && int.TryParse(text.AsSpan(dash + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var most) && least <= most
            ? new Band(least, most)
            : throw row.Malformed(column);
    }
}
