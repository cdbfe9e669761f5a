using System.Buffers.Binary;

namespace Scrapwright.Paper.Tests;

/// <summary>Reads the advance widths of a TrueType font, as the OpenType specification lays out the tables cmap (format 4), hhea and hmtx.</summary>
internal sealed class TrueTypeFont(byte[] bytes)
{
    private readonly Dictionary<string, int> tables = Enumerable.Range(0, U16(bytes, 4))
        .ToDictionary(i => System.Text.Encoding.ASCII.GetString(bytes, 12 + (16 * i), 4), i => (int)BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(12 + (16 * i) + 8)));

    internal int UnitsPerEm => U16(bytes, tables["head"] + 18);

    internal int CapitalHeight => (short)U16(bytes, tables["OS/2"] + 88);

    /// <summary>Advance width of every character of the basic plane from the space on.</summary>
    internal SortedDictionary<int, int> Advances()
    {
        var advances = new SortedDictionary<int, int>();
        var map = Format4();
        var segments = U16(bytes, map + 6) / 2;
        for (var s = 0; s < segments; s++)
        {
            var end = U16(bytes, map + 14 + (2 * s));
            var startAt = map + 16 + (2 * segments) + (2 * s);
            var delta = U16(bytes, startAt + (2 * segments));
            var rangeAt = startAt + (4 * segments);
            var range = U16(bytes, rangeAt);
            for (var c = (int)U16(bytes, startAt); c <= end && c != 0xffff; c++)
            {
                var glyph = range == 0 ? (c + delta) & 0xffff : U16(bytes, rangeAt + range + (2 * (c - U16(bytes, startAt))));
                if (range != 0 && glyph != 0) glyph = (glyph + delta) & 0xffff;
                if (glyph != 0 && c >= 0x20) advances[c] = Advance(glyph);
            }
        }

        return advances;
    }

    private int Advance(int glyph) => U16(bytes, tables["hmtx"] + (4 * Math.Min(glyph, U16(bytes, tables["hhea"] + 34) - 1)));

    private int Format4()
    {
        var cmap = tables["cmap"];
        return Enumerable.Range(0, U16(bytes, cmap + 2))
            .Select(i => cmap + (int)BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(cmap + 8 + (8 * i))))
            .Last(at => U16(bytes, at) == 4);
    }

    private static ushort U16(byte[] bytes, int at) => BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(at));
}
