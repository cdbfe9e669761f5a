namespace Scrapwright.Core.Wood;

/// <summary>How two colours stand beside each other. <c>default</c> is no contrast.</summary>
public readonly record struct Contrast
{
    private Contrast(double difference, double lightnessDifference)
    {
        Difference = difference;
        LightnessDifference = lightnessDifference;
    }

    /// <summary>CIEDE2000 difference. [ΔE00]</summary>
    public double Difference { get; }

    /// <summary>Lightness of the second less that of the first: positive when the second is lighter. [CIELAB L]</summary>
    public double LightnessDifference { get; }

    /// <summary>The difference as a word.</summary>
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
