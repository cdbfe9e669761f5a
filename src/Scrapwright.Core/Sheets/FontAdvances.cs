using System.Collections.Frozen;
using System.Globalization;

namespace Scrapwright.Core.Sheets;

/// <summary>
/// How wide text is, from the advance widths of the font the sheets are set in: Open Sans, regular and bold. The table advances.txt
/// holds code point, regular and bold advance per line and is compared with the font by a test.
/// </summary>
public static class FontAdvances
{
    /// <summary>Family name of the font.</summary>
    public const string Family = "Open Sans";

    /// <summary>Units of the table per size of the letters.</summary>
    public const int UnitsPerEm = 2048;

    private const double MmPerPt = 25.4 / 72;

    // Advance of a letter that the font does not have: a full square, so that its stand-in has room.
    private const int Unknown = 2048;

    private static readonly Lazy<FrozenDictionary<int, (int Regular, int Bold)>> Table = new(Read);

    /// <summary>Width of a text. [mm]</summary>
    /// <param name="text">Any text; letters that the font lacks count a full square.</param>
    /// <param name="sizePt">Size of the letters. [pt]</param>
    /// <param name="bold">True for the bold font.</param>
    public static double WidthMm(string text, double sizePt, bool bold)
    {
        ArgumentNullException.ThrowIfNull(text);
        long units = 0;
        foreach (var rune in text.EnumerateRunes())
            units += Table.Value.TryGetValue(rune.Value, out var advance) ? (bold ? advance.Bold : advance.Regular) : Unknown;

        return units * sizePt * MmPerPt / UnitsPerEm;
    }

    /// <summary>True when the font has the letter.</summary>
    /// <param name="codePoint">Unicode code point.</param>
    public static bool Has(int codePoint) => Table.Value.ContainsKey(codePoint);

    /// <summary>Height of capitals and figures above the foot line: 1462 of 2048, from the font. [mm]</summary>
    public static double CapitalMm(double sizePt) => 1462 * sizePt * MmPerPt / UnitsPerEm;

    /// <summary>Room above the foot line for letters with ascenders: 0.77 of the size. [mm]</summary>
    public static double AscentMm(double sizePt) => 0.77 * sizePt * MmPerPt;

    /// <summary>Room below the foot line for letters with descenders: 0.24 of the size. [mm]</summary>
    public static double DescentMm(double sizePt) => 0.24 * sizePt * MmPerPt;

    private static FrozenDictionary<int, (int Regular, int Bold)> Read()
    {
        using var stream = typeof(FontAdvances).Assembly.GetManifestResourceStream("Scrapwright.Core.Sheets.advances.txt")
            ?? throw new InvalidOperationException("The table of advance widths is not in the assembly. Maybe it is missing in the project file.");
        using var reader = new StreamReader(stream);
        var rows = new Dictionary<int, (int, int)>();
        while (reader.ReadLine() is { } line)
        {
            var fields = line.Split(' ');
            rows.Add(
                int.Parse(fields[0], NumberStyles.HexNumber, CultureInfo.InvariantCulture),
                (int.Parse(fields[1], CultureInfo.InvariantCulture), int.Parse(fields[2], CultureInfo.InvariantCulture)));
        }

        return rows.ToFrozenDictionary();
    }
}
