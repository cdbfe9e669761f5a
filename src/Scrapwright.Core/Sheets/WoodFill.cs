using System.Globalization;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Sheets;

/// <summary>Fills wood on drawings, by colour or hatch, and says which ink reads on it.</summary>
internal sealed class WoodFill(DrawingLook look, Hatches hatches)
{
    internal bool Hatched => look == DrawingLook.Hatched;

    internal void Fill(Pen pen, Frame frame, string species, Ink outline)
    {
        pen.Box(frame, null, Hatched ? Ink.White : Colour(species));
        if (Hatched) hatches.Fill(pen, frame, species);
        pen.Box(frame, outline);
    }

    /// <summary>Plate below a label: white on a hatch, none on a colour.</summary>
    internal string? Plate => Hatched ? Ink.White : null;

    /// <summary>Black or white, whichever stands out more on the species' colour (WCAG 2 contrast ratio).</summary>
    internal string InkOn(string species)
    {
        if (Hatched) return Ink.Black;
        var luminance = Luminance(Colour(species));
        return (luminance + 0.05) / 0.05 >= 1.05 / (luminance + 0.05) ? Ink.Black : Ink.White;
    }

    /// <summary>Relative luminance of a colour, as WCAG 2 defines it: 0 black to 1 white.</summary>
    internal static double Luminance(string hex)
    {
        double Channel(int at)
        {
            var value = int.Parse(hex.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
        }

        return (0.2126 * Channel(1)) + (0.7152 * Channel(3)) + (0.0722 * Channel(5));
    }

    private static string Colour(string species) => SpeciesTable.FindKey(species)?.DisplayHex ?? "#d8d2c8";
}
