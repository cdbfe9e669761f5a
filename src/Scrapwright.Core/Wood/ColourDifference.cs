namespace Scrapwright.Core.Wood;

/// <summary>How different two colours look.</summary>
public static class ColourDifference
{
    // 25 to the seventh power: [Sharma2005], equations 4 and 20.
    private const double TwentyFiveToSeventh = 6103515625;

    /// <summary>The CIEDE2000 colour difference with all weights 1.</summary>
    /// <param name="a">One colour.</param>
    /// <param name="b">The other.</param>
    /// <returns>ΔE00, 0 when equal; about 1 is just visible side by side. Symmetric.</returns>
    /// <remarks>Source: [Sharma2005], equations 2 to 22, whose notes settle the mean hue and the sign of the hue difference. The page docs/science/colour-difference.md has the formula.</remarks>
    public static double Ciede2000(LabColour a, LabColour b)
    {
        double meanChroma7 = Math.Pow((a.Chroma + b.Chroma) / 2, 7);
        double g = 0.5 * (1 - Math.Sqrt(meanChroma7 / (meanChroma7 + TwentyFiveToSeventh)));
        double a1 = (1 + g) * a.A, a2 = (1 + g) * b.A;
        double c1 = Math.Sqrt(a1 * a1 + a.B * a.B), c2 = Math.Sqrt(a2 * a2 + b.B * b.B);
        double h1 = HueDegrees(a1, a.B), h2 = HueDegrees(a2, b.B);
        bool grey = c1 * c2 == 0;

        double deltaL = b.L - a.L;
        double deltaC = c2 - c1;
        double deltaH = 2 * Math.Sqrt(c1 * c2) * SinDegrees(grey ? 0 : HueStepDegrees(h1, h2) / 2);

        double meanL = (a.L + b.L) / 2;
        double meanC = (c1 + c2) / 2;
        double meanH = grey ? h1 + h2 : MeanHueDegrees(h1, h2);

        double t = 1 - 0.17 * CosDegrees(meanH - 30) + 0.24 * CosDegrees(2 * meanH)
            + 0.32 * CosDegrees(3 * meanH + 6) - 0.20 * CosDegrees(4 * meanH - 63);
        double fromFifty = (meanL - 50) * (meanL - 50);
        double weightL = 1 + 0.015 * fromFifty / Math.Sqrt(20 + fromFifty);
        double weightC = 1 + 0.045 * meanC;
        double weightH = 1 + 0.015 * meanC * t;
        double meanC7 = Math.Pow(meanC, 7);
        double blue = (meanH - 275) / 25;
        double rotation = -2 * Math.Sqrt(meanC7 / (meanC7 + TwentyFiveToSeventh)) * SinDegrees(60 * Math.Exp(-blue * blue));

        double lightness = deltaL / weightL, chroma = deltaC / weightC, hue = deltaH / weightH;
        return Math.Sqrt(lightness * lightness + chroma * chroma + hue * hue + rotation * chroma * hue);
    }

    // Definition: 360 degrees in a turn, here and in what follows.
    private static double HueDegrees(double a, double b)
    {
        double degrees = a == 0 && b == 0 ? 0 : Math.Atan2(b, a) * 180 / Math.PI;
        return degrees < 0 ? degrees + 360 : degrees;
    }

    // [Sharma2005], equation 10: the shorter way round.
    private static double HueStepDegrees(double from, double to) => (to - from) switch
    {
        > 180 => to - from - 360,
        < -180 => to - from + 360,
        double step => step,
    };

    // [Sharma2005], equation 14: the mean on the shorter way round.
    private static double MeanHueDegrees(double one, double other)
    {
        double sum = one + other;
        return Math.Abs(one - other) <= 180 ? sum / 2 : sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
    }

    // Definition: 180 degrees in half a turn.
    private static double SinDegrees(double degrees) => Math.Sin(degrees * Math.PI / 180);

    // Definition, as above.
    private static double CosDegrees(double degrees) => Math.Cos(degrees * Math.PI / 180);
}
