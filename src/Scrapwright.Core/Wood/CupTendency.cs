using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Wood;

/// <summary>How far and which way a strip cups when its moisture changes. An estimate. <c>default</c> is flat.</summary>
/// <param name="BarkSideHollowMm">Depth of the hollow on the bark side over the whole width; negative when the heart side goes hollow. [mm]</param>
public readonly record struct CupTendency(double BarkSideHollowMm)
{
    /// <summary>Depth of the hollow, on whichever side, to the nearest picometre.</summary>
    public Length Depth => Length.FromMillimetresRounded(Math.Abs(BarkSideHollowMm));

    /// <summary>The depth as a word.</summary>
    public CupGrade Grade => Math.Abs(BarkSideHollowMm) switch
    {
        // Our own choice, see CupGrade.
        < 0.1 => CupGrade.None,
        < 0.5 => CupGrade.Slight,
        _ => CupGrade.Marked,
    };

    /// <summary>The tendency in words, for example <c>slight cup, bark side hollow (estimate)</c>.</summary>
    public string InWords
    {
        get
        {
            string side = BarkSideHollowMm < 0 ? "heart side" : "bark side";
            return Grade switch
            {
                CupGrade.None => "stays flat (estimate)",
                CupGrade.Slight => $"slight cup, {side} hollow (estimate)",
                _ => $"marked cup, {side} hollow (estimate)",
            };
        }
    }
}
