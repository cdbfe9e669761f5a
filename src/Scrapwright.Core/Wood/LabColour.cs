namespace Scrapwright.Core.Wood;

/// <summary>A colour in CIELAB under daylight D65, 2 degree observer. <c>default</c> is black.</summary>
/// <param name="L">Lightness. 0 black to 100 white.</param>
/// <param name="A">Green (negative) to red (positive).</param>
/// <param name="B">Blue (negative) to yellow (positive).</param>
public readonly record struct LabColour(double L, double A, double B)
{
    // D65 as the sRGB standard has it, [Iec61966]: x = 0.3127, y = 0.3290, Y = 1, rounded to the four digits of its matrices.
    private const double WhiteX = 0.9505;
    // [Iec61966], as above.
    private const double WhiteZ = 1.0890;
    // [Cie15]: (6/29)³ and (29/3)³ as exact fractions.
    private const double Epsilon = 216.0 / 24389;
    // [Cie15], as above.
    private const double Kappa = 24389.0 / 27;

    /// <summary>True when a screen can show the colour without clipping. A channel may be out by one part in a thousand: the standard's matrices have four digits.</summary>
    public bool IsInSrgbGamut
    {
        get
        {
            (double red, double green, double blue) = LinearRgb();
            return Inside(red) && Inside(green) && Inside(blue);

            // Our own choice: a thousandth, see the summary.
            static bool Inside(double channel) => channel is >= -0.001 and <= 1.001;
        }
    }

    /// <summary>Strength of the colour, away from grey. [CIELAB units]</summary>
    public double Chroma => Math.Sqrt(A * A + B * B);

    /// <summary>The nearest 8-bit screen colour; each channel is clipped to what a screen can show and rounded half up.</summary>
    /// <remarks>Sources: [Cie15], CIELAB; [Iec61966], matrix from XYZ and transfer function.</remarks>
    public SrgbColour ToSrgb()
    {
        (double red, double green, double blue) = LinearRgb();
        return new SrgbColour(Encode(red), Encode(green), Encode(blue));
    }

    /// <summary>CIELAB from tristimulus values, Y of white being 1.</summary>
    /// <remarks>Source: [Cie15], the cube root with its straight part below (6/29)³, in exact fractions.</remarks>
    internal static LabColour FromXyz(double x, double y, double z)
    {
        double fx = Root(x / WhiteX), fy = Root(y), fz = Root(z / WhiteZ);
        return new LabColour(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));

        static double Root(double t) => t > Epsilon ? Math.Cbrt(t) : (Kappa * t + 16) / 116;
    }

    // [Cie15] backwards, then the matrix of [Iec61966].
    private (double Red, double Green, double Blue) LinearRgb()
    {
        double fy = (L + 16) / 116;
        double x = WhiteX * Cube(fy + A / 500);
        double y = Cube(fy);
        double z = WhiteZ * Cube(fy - B / 200);
        return (
            3.2406 * x - 1.5372 * y - 0.4986 * z,
            -0.9689 * x + 1.8758 * y + 0.0415 * z,
            0.0557 * x - 0.2040 * y + 1.0570 * z);

        static double Cube(double f)
        {
            double cube = f * f * f;
            return cube > Epsilon ? cube : (116 * f - 16) / Kappa;
        }
    }

    // [Iec61966], transfer function; 8 bits by definition, halves up.
    private static byte Encode(double linear)
    {
        double value = linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.Pow(linear, 1 / 2.4) - 0.055;
        return (byte)Math.Floor(Math.Clamp(value, 0, 1) * 255 + 0.5);
    }
}
