namespace Scrapwright.Core.Wood;

/// <summary>How two colours stand beside each other. <c>default</c> is no contrast.</summary>
public readonly record struct Contrast
{
    /// <summary>Least difference of lightness that keeps two woods apart without colour: for eyes that see colours alike, on grey paper, in a dim shed. [CIELAB L]; our own choice (estimate).</summary>
    public const double LightnessApart = 10;

    private Contrast(double difference, double lightnessDifference)
    {
        Difference = difference;
        LightnessDifference = lightnessDifference;
    }

    /// <summary>CIEDE2000 difference. [ΔE00]</summary>
    public double Difference { get; }

    /// <summary>Lightness of the second less that of the first: positive when the second is lighter. [CIELAB L]</summary>
    public double LightnessDifference { get; }

    /// <summary>True when the two stand apart by lightness alone: at least <see cref="LightnessApart"/>.</summary>
    public bool StandsApartWithoutColour => Math.Abs(LightnessDifference) >= LightnessApart;

    /// <summary>The judgement without colour, in words.</summary>
    public string WithoutColourInWords => StandsApartWithoutColour ? "told apart without colour" : "not told apart without colour";

    /// <summary>The difference as a word. Limits are our own choice (estimate), see <see cref="ContrastGrade"/>.</summary>
    public ContrastGrade Grade => Difference switch
    {
        < 3 => ContrastGrade.None,
        < 8 => ContrastGrade.Slight,
        < 20 => ContrastGrade.Clear,
        _ => ContrastGrade.Strong,
    };

    /// <summary>The contrast in words, for example <c>strong contrast, much lighter</c>. Says what the second is against the first.</summary>
    public string InWords
    {
        get
        {
            string grade = Grade switch
            {
                ContrastGrade.None => "no contrast",
                ContrastGrade.Slight => "slight contrast",
                ContrastGrade.Clear => "clear contrast",
                _ => "strong contrast",
            };
            string side = LightnessDifference < 0 ? "darker" : "lighter";
            // Our own choice (estimate), see docs/science/colour-difference.md.
            return Math.Abs(LightnessDifference) switch
            {
                _ when Grade == ContrastGrade.None => grade,
                < 3 => $"{grade}, equally light",
                < 15 => $"{grade}, {side}",
                _ => $"{grade}, much {side}",
            };
        }
    }

    /// <summary>The contrast of the second colour against the first.</summary>
    /// <param name="first">The colour compared with.</param>
    /// <param name="second">The colour beside it.</param>
    public static Contrast Between(LabColour first, LabColour second) =>
        new(ColourDifference.Ciede2000(first, second), second.L - first.L);
}
