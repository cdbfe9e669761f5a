namespace Scrapwright.Core.Wood;

/// <summary>A screen colour: sRGB, 8 bits a channel. <c>default</c> is black.</summary>
/// <param name="Red">Red. [0 to 255]</param>
/// <param name="Green">Green. [0 to 255]</param>
/// <param name="Blue">Blue. [0 to 255]</param>
public readonly record struct SrgbColour(byte Red, byte Green, byte Blue)
{
    /// <summary>As written in style sheets: <c>#rrggbb</c>, small letters.</summary>
    public string Hex => $"#{Red:x2}{Green:x2}{Blue:x2}";

    /// <summary>The CIELAB colour under D65 of this screen colour.</summary>
    /// <remarks>Sources: [Iec61966], transfer function and matrix; [Cie15], CIELAB.</remarks>
    public LabColour ToLab()
    {
        double r = Linear(Red), g = Linear(Green), b = Linear(Blue);
        return LabColour.FromXyz(
            0.4124 * r + 0.3576 * g + 0.1805 * b,
            0.2126 * r + 0.7152 * g + 0.0722 * b,
            0.0193 * r + 0.1192 * g + 0.9505 * b);
    }

    /// <summary>As <see cref="Hex"/>.</summary>
    public override string ToString() => Hex;

    // [Iec61966], transfer function backwards; 8 bits by definition.
    private static double Linear(byte channel)
    {
        double value = channel / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
    }
}
